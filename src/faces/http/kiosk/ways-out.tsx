// Ways out of a page: a code that opens the same page on a phone.
import type { FastifyRequest } from 'fastify'
import { renderSVG } from 'uqr'
import type { Words } from '../../../words/index.ts'

// A longer one is drawn for tens of milliseconds, and few phones read it.
const LONGEST_CODE = 800

/** Whether an address is one by which another device can reach this desk. */
const isReachable = (base: string): boolean =>
  URL.canParse(base) && !/^(localhost|127\.|\[?::1\]?$|0\.0\.0\.0)/.test(new URL(base).hostname)

/** The address of this desk: as it was set, else as the browser itself used it. */
export const baseOf = (request: FastifyRequest, publicUrl: string | undefined): string =>
  publicUrl ?? `${request.protocol}://${request.host}`

/** The code as a sheet of its own; undefined where the path is too long for one that a phone reads. */
export const codeOf = (base: string, path: string): string | undefined => {
  const address = `${base}${path}`
  return address.length > LONGEST_CODE ? undefined : renderSVG(address, { border: 4, ecc: 'M', pixelSize: 8 })
}

export const TakeAlong = ({ words: { kiosk }, base, here }: { words: Words; base: string; here: string }) => (
  <details class="part take-along">
    <summary>{kiosk.takeAlong}</summary>
    {isReachable(base) ? (
      <p>
        <img class="code" src={`/qr.svg?to=${encodeURIComponent(here)}`} alt={kiosk.qrAlt} width="240" height="240" />
      </p>
    ) : (
      <p>{kiosk.qrNone}</p>
    )}
    <p>{kiosk.print}</p>
  </details>
)
