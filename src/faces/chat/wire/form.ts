// What is sent with files: a form of parts (RFC 7578) as Discord takes it, put together once as bytes: for the callback and for
// the reply to what is posted alike.
import { randomUUID } from 'node:crypto'
import type { FirstResponse } from './first-response.ts'

export interface Form {
  readonly type: string
  readonly body: Buffer
}

const partOf = (boundary: string, name: string, more: string, content: Buffer): Buffer[] => [
  Buffer.from(`--${boundary}\r\nContent-Disposition: form-data; name="${name}"${more}\r\n\r\n`, 'utf8'),
  content,
  Buffer.from('\r\n', 'utf8'),
]

const typeOfFile = (name: string): string => (name.endsWith('.png') ? 'image/png' : 'text/plain; charset=utf-8')

/** Names of files are our own: nothing in them needs to be escaped. */
export const formOf = ({ body, files }: FirstResponse): Form => {
  const boundary = `armlength-${randomUUID()}`
  const json = Buffer.from(JSON.stringify(body), 'utf8')
  const parts = [
    ...partOf(boundary, 'payload_json', '\r\nContent-Type: application/json', json),
    ...files.flatMap(({ name, data }, n) =>
      partOf(boundary, `files[${n}]`, `; filename="${name}"\r\nContent-Type: ${typeOfFile(name)}`, data),
    ),
    Buffer.from(`--${boundary}--\r\n`, 'utf8'),
  ]
  return { type: `multipart/form-data; boundary=${boundary}`, body: Buffer.concat(parts) }
}
