// From the start of the process to the line that says it listens; and how much memory it holds after some load.
import { readFileSync } from 'node:fs'
import { startService } from '../support/service.ts'

export const benchStart = async (): Promise<{ startMs: number; rssMiB: number }> => {
  const times: number[] = []
  for (let n = 0; n < 5; n++) {
    const before = performance.now()
    const service = await startService({})
    times.push(performance.now() - before)
    service.kill()
  }
  const service = await startService({})
  for (let n = 0; n < 4000; n += 100) {
    await Promise.all(
      Array.from({ length: 50 }, (_, m) =>
        fetch(`${service.url}/v1/questions/pull?torque=${n + m + 1}+N%C2%B7m&hand=1+m`).then((reply) => reply.text()),
      ),
    )
  }
  for (let n = 0; n < 20; n++)
    await (
      await fetch(
        `${service.url}/v1/questions/adapter-setting/figure.png?torque=${n + 20}+N%C2%B7m&lever=400+mm&adapter=50+mm`,
      )
    ).arrayBuffer()
  const pid = service.pid
  const rss = Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024
  service.kill()
  return { startMs: times.sort((a, b) => a - b)[2] as number, rssMiB: rss }
}
