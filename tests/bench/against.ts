// The built program of this tree and that of another commit, measured in turn: in process, over HTTP, and as they start.
import { type ChildProcess, fork } from 'node:child_process'
import { join } from 'node:path'
import { memoryMiB } from '../faults/shop.ts'
import { root, type Service, startService } from '../support/service.ts'
import { type AgainstWanted, type Measures, type Round, tableOf } from './against-table.ts'
import { checkOut } from './against-tree.ts'
import { openWire, torqueOf } from './wire.ts'

const CONNECTIONS = 8
const SECONDS = 1

const paths: Readonly<Record<string, (n: number) => string>> = {
  answers: (n) => `/v1/questions/adapter-setting?torque=${torqueOf(n)}&lever=380+mm&adapter=45+mm%4030`,
  'free text': (n) => `/v1/ask?text=what+to+set+for+${torqueOf(n)}+with+a+45+mm+adapter+on+a+380+mm+wrench`,
  'kiosk fragments': (n) => `/ask/adapter-setting/live?torque=${torqueOf(n)}&lever=380+mm&adapter=45+mm%4030`,
  'the board': () => '/board',
}

let asked = 0
const rateOf = async (url: string, path: (n: number) => string): Promise<number> => {
  const end = performance.now() + SECONDS * 1000
  let done = 0
  const worker = async (_: unknown, n: number): Promise<void> => {
    const wire = openWire(url, n)
    while (performance.now() < end) {
      const { status } = await wire.send(path(++asked))
      if (status !== 200) throw new Error(`HTTP ${status} for ${path(asked)}`)
      done++
    }
    wire.close()
  }
  await Promise.all(Array.from({ length: CONNECTIONS }, worker))
  return done / SECONDS
}

interface Side {
  readonly measure: () => Promise<Measures>
  readonly end: () => void
}

const told = (child: ChildProcess): Promise<unknown> =>
  new Promise((resolve, reject) => {
    const ended = (code: number | null): void => reject(new Error(`the desk in process ended with ${code}`))
    child.once('exit', ended)
    child.once('message', (message) => {
      child.removeListener('exit', ended)
      resolve(message)
    })
  })

const openSide = async (tree: string): Promise<Side> => {
  const desk = fork(join(import.meta.dirname, 'against-desk.ts'), [tree], { execArgv: ['--import', 'tsx'] })
  let service: Service | undefined
  const end = (): void => {
    desk.kill()
    service?.kill()
  }
  try {
    await told(desk)
    service = await startService({}, [], '', tree)
    const { url } = service
    const running = service
    return {
      end,
      measure: async () => {
        const answer = told(desk)
        desk.send('measure')
        const inProcess = (await answer) as Measures
        const rates: Array<[string, number]> = []
        for (const [name, path] of Object.entries(paths)) rates.push([`${name}, a second`, await rateOf(url, path)])
        const before = performance.now()
        const fresh = await startService({}, [], '', tree)
        const start = performance.now() - before
        fresh.kill()
        return { ...inProcess, ...Object.fromEntries(rates), 'start, ms': start, 'memory, MiB': memoryMiB(running) }
      },
    }
  } catch (error) {
    end()
    throw error
  }
}

type Line = (...cells: readonly (string | number)[]) => void

export const benchAgainst = async ({ commit, rounds }: AgainstWanted, line: Line): Promise<void> => {
  const stop = new AbortController()
  const sides: Side[] = []
  // What is under way then fails, and all is taken away on the way out.
  const interrupted = (): void => {
    stop.abort(new Error('interrupted: nothing is left behind'))
    for (const side of sides) side.end()
  }
  process.once('SIGINT', interrupted).once('SIGTERM', interrupted)
  const tree = await checkOut(commit, stop.signal)
  try {
    const open = async (folder: string): Promise<Side> => {
      stop.signal.throwIfAborted()
      const side = await openSide(folder)
      sides.push(side)
      return side
    }
    const [old, now] = [await open(tree.folder), await open(root)]
    // One round warms both.
    await old.measure()
    await now.measure()
    const measured: Round[] = []
    for (let n = 0; n < rounds; n++) {
      stop.signal.throwIfAborted()
      measured.push({ old: await old.measure(), new: await now.measure() })
    }
    const { rows, alone } = tableOf(measured)
    line(`${rounds} rounds in turn`, tree.commit.slice(0, 9), 'this tree', 'ratio', 'least', 'most')
    for (const row of rows) line(`  ${row.name}`, row.old, row.new, row.ratio, row.least, row.most)
    if (alone.length > 0) line(`on one side alone: ${alone.join(', ')}`)
  } catch (error) {
    throw stop.signal.aborted ? stop.signal.reason : error
  } finally {
    for (const side of sides) side.end()
    await tree.remove()
    process.removeListener('SIGINT', interrupted).removeListener('SIGTERM', interrupted)
  }
}
