// A check of a wrench at the terminal, with lines handed in: asked reading by reading, a slip asked back, kept or not, exit codes.
import { beforeEach, describe, expect, it } from 'vitest'
import type { Shop } from '../../../src/desk/shop.ts'
import { runTerminal } from '../../../src/faces/terminal/terminal.ts'
import { testDesk, testShop } from '../../support/doors.ts'

let shop: Shop
beforeEach(async () => {
  shop = testShop()
  const who = { role: 'keeper', door: 'terminal' } as const
  const wrench = {
    tag: 'W-07',
    name: 'Half-inch click wrench',
    'wrench-type': 'click',
    least: '40 N·m',
    most: '200 N·m',
    mark: '1 N·m',
  }
  const scale = { tag: 'S-1', name: 'Scale', 'gauge-type': 'luggage-scale', 'most-force': '60 kg', tolerance: '0.5 %' }
  await shop.keep('wrench', wrench, who)
  await shop.keep('gauge', scale, who)
})

async function* handed(lines: readonly string[]): AsyncGenerator<string> {
  yield* lines
}

const run = async (argv: readonly string[], lines?: readonly string[]) => {
  const out: string[] = []
  const err: string[] = []
  const io = {
    out: (line: string) => out.push(line),
    err: (line: string) => err.push(line),
    ...(lines ? { lines: handed(lines) } : {}),
  }
  const code = await runTerminal(['check', ...argv], testDesk(), io, shop)
  return { code, out: out.join('\n'), err: err.join('\n') }
}

const asked = ['wrench=W-07', 'gauge=S-1', 'distance=400 mm', 'lie=upright']
const whole = ['100 N', '101', '100', '99', '100', '300', '301', '300', '299', '300', '500', '501', '500', '499', '500']
const checks = async () => (await shop.wrench('W-07'))?.row.folder.checks ?? []

describe('a check at the terminal', () => {
  it('without lines prints the plan', async () => {
    const { code, out } = await run(asked)
    expect(code).toBe(0)
    expect(out).toContain('Set W-07 to 40 N·m, 120 N·m, 200 N·m in this order, 5 readings at each.')
    expect(out).toContain('First pull it 5 times to 200 N·m, unrecorded.')
    // 96.15 N is 9.805 kgf, 104.17 N 10.62 kgf: the scale is marked in kg, the ends are rounded inward.
    expect(out).toContain('40 N·m (20 %): the gauge shows 9.81 kgf to 10.62 kgf, at best 10.2 kgf')
  })

  it('asks reading by reading, shows the verdict grow, and keeps as a keeper when told to', async () => {
    const { code, out } = await run(asked, [...whole, 'yes'])
    expect(code).toBe(0)
    expect(out).toContain('Set 120 N·m. Reading 3 of 5')
    expect(out).toContain('40 N·m, 2 read: mean 40.2 N·m')
    expect(out).toContain('All readings are in: pass.')
    const [kept] = await checks()
    expect(out).toContain(`/wrench/W-07/check/${kept?.entry.id}`)
    expect(kept?.entry.by).toEqual({ role: 'keeper', door: 'terminal' })
    expect(kept?.entry.body.points.map(({ readings }) => readings.length)).toEqual([5, 5, 5])
  })

  it('asks a slip back: typed again it is forgotten, with yes it stands', async () => {
    const again = await run(asked, ['1000 N', '100 N', ''])
    expect(again.out).toContain('Was it 100 N?')
    expect(again.out).toContain('40 N·m, 1 read: mean 40 N·m')
    const stands = await run(asked, ['1000 N', 'yes', ''])
    expect(stands.out).toContain('40 N·m, 1 read: mean 400 N·m')
    expect(stands.out).toContain('fail')
  })

  it('goes on after what could not be read, and loses nothing', async () => {
    const { out } = await run(asked, ['100 N', 'well', '-5', '101', ''])
    expect(out).toContain('40 N·m, 2 read')
  })

  it('left before it is whole, or not kept, exits with 3 or 0 and says how to go on', async () => {
    const left = await run(asked, ['100 N', '101', ''])
    expect(left.code).toBe(3)
    expect(left.out).toContain('points="40 N·m: 100; 101 N"')
    expect((await run(asked, [...whole, 'no'])).code).toBe(0)
    expect(await checks()).toEqual([])
  })

  it('takes up what was left, and asks at once whether to keep what is whole', async () => {
    const resumed = await run([...asked, 'points=40 N·m: 100; 101 N'], ['99', ''])
    expect(resumed.out).toContain('Reading 3 of 5')
    expect(resumed.out).toContain('40 N·m, 3 read')
    const points =
      '40 N·m: 100; 100; 100; 100; 100 N | 120 N·m: 300; 300; 300; 300; 300 N | 200 N·m: 500; 500; 500; 500; 500 N'
    expect((await run([...asked, `points=${points}`], ['y'])).out).toContain('Kept as')
    expect(await checks()).toHaveLength(1)
  })

  it('exits with 2 for a fault, 3 for what is missing, 64 for no input, and lists the inputs', async () => {
    expect((await run(['wrench=W-99', 'way=tester'])).code).toBe(2)
    expect(await run(['wrench=W-07', 'gauge=S-1'])).toMatchObject({ code: 3, out: expect.stringContaining('distance') })
    expect((await run(['W-07'])).code).toBe(64)
    expect((await run(['--help'])).out).toContain('distance="380 mm"')
  })

  it('with --json gives the document and asks nobody', async () => {
    const { code, out } = await run([...asked, '--json'], ['100 N'])
    expect(code).toBe(0)
    expect(JSON.parse(out)).toMatchObject({ status: 'planned', taken: 0 })
  })
})
