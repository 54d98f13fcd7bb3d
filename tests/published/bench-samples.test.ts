// Two published sets of clamp forces at one torque, kept and judged as a bench run: the printed means and spreads come out, and
// the run says of them what the print says: lubrication left the mean and cut the scatter.
// Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., tables 8-13 and 8-14, p. 438 f. (after Blake & Kurtz 1965).
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { runDocument } from '../../src/desk/run-document.ts'
import { languageFor } from '../../src/words/index.ts'
import { testShop } from '../support/doors.ts'

interface Row {
  readonly id: string
  readonly inputs: { readonly torque_Nm: number; readonly preload_sample_kN: readonly number[] }
  readonly expected: { readonly mean_kN: number; readonly sd_kN: number }
}
const rows = JSON.parse(readFileSync(join(import.meta.dirname, 'friction-and-preload.json'), 'utf8')) as Row[]
const sample = (id: string): Row => {
  const row = rows.find((one) => one.id === id)
  if (!row) throw new Error(`no row ${id}`)
  return row
}
const sets = { dry: sample('MEAS-BLAKEKURTZ-unlubricated'), oiled: sample('MEAS-BLAKEKURTZ-lubricated') }

const kept = async () => {
  const shop = testShop()
  const who = { role: 'keeper', door: 'http' } as const
  await shop.keep(
    'run',
    { tag: 'B-01', date: '2026-05-01', asked: 'Does oil matter?', conditions: 'dry | oiled', size: '1/2-20' },
    who,
  )
  for (const [condition, { inputs }] of Object.entries(sets)) {
    const torque = `${inputs.preload_sample_kN.map(() => inputs.torque_Nm).join('; ')} N·m`
    const clamp = `${inputs.preload_sample_kN.join('; ')} kN`
    const sent = { run: 'B-01', condition, date: '2026-05-01', torque, 'clamp-force': clamp }
    expect((await shop.keep('run-reading', sent, who)).kind).toBe('kept')
  }
  const run = await shop.runs.one('B-01')
  if (!run) throw new Error('no run')
  return runDocument(run.folder, languageFor('en', 'en'), '2026-06-01')
}

it('thirty readings are there', () => {
  expect(Object.values(sets).map(({ inputs }) => inputs.preload_sample_kN.length)).toEqual([20, 10])
})

it('means and spreads to the printed digits', async () => {
  const [clamp] = (await kept()).subjects
  expect(clamp?.subject.code).toBe('clamp')
  const [dry, oiled] = clamp?.sets ?? []
  // Printed 34.3 and 4.91; 34.18 and 2.88.
  expect(Math.abs((dry?.mean?.value ?? 0) - sets.dry.expected.mean_kN)).toBeLessThanOrEqual(0.05)
  expect(Math.abs((dry?.spread?.value ?? 0) - sets.dry.expected.sd_kN)).toBeLessThanOrEqual(0.005)
  expect(Math.abs((oiled?.mean?.value ?? 0) - sets.oiled.expected.mean_kN)).toBeLessThanOrEqual(0.005)
  expect(Math.abs((oiled?.spread?.value ?? 0) - sets.oiled.expected.sd_kN)).toBeLessThanOrEqual(0.005)
})

it('the means are not told apart, and thirty readings do not tell them alike at 4 % either', async () => {
  const [verdict] = (await kept()).subjects[0]?.verdicts ?? []
  expect(verdict?.verdict.code).toBe('not-decided')
  expect(Math.abs(verdict?.difference.value ?? 1)).toBeLessThan(1)
  expect(verdict?.more).toBeGreaterThan(10)
})

it('K by its definition: 90 N·m, half an inch, and the mean of 1/F', async () => {
  const [dry] = (await kept()).factors
  const { preload_sample_kN: forces } = sets.dry.inputs
  const mean = forces.reduce((sum, force) => sum + 90 / (0.0127 * force * 1000), 0) / forces.length
  expect(dry?.k.value).toBeCloseTo(mean, 9)
  // A fifth of it either way is little beside a scatter of 14 %.
  expect((dry?.k.high?.value ?? 0) / mean).toBeGreaterThan(1.25)
})
