// What a second look at the answers found: bounds that hold, spans that reach as far as they can, and slips that are said.
import { describe, expect, it } from 'vitest'
import { conditionTable } from '../../src/tables/conditions.ts'
import { findNutFactor, type NutFactorSource } from '../../src/tables/nut-factors.ts'
import { answered, ask, cautionsOf, codesOf, numberOf, resultOf } from '../support/desk.ts'

describe('the range of a state', () => {
  it.each([
    ['dry', 'bickford', 'as_received_steel_on_steel'],
    ['dry', 'supplier', 'dry_steel'],
    ['dry', 'shigley', 'nonplated_black_finish'],
    ['oiled', 'supplier', 'machine_oil'],
    ['oiled', 'bickford', 'machine_oil'],
    ['zinc', 'supplier', 'zinc'],
    ['zinc', 'bickford', 'zinc_plate_dry'],
    ['cadmium', 'supplier', 'cadmium'],
    ['cadmium', 'bickford', 'cadmium_plate_dry'],
    ['phosphate-oiled', 'supplier', 'phosphate_and_oil'],
    ['phosphate-oiled', 'bickford', 'phosphate_and_oil'],
    ['anti-seize', 'bickford', 'copper_based_antiseize'],
    ['anti-seize', 'bickford', 'nickel_antiseize_paste'],
    ['moly', 'bickford', 'moly_paste_or_grease'],
    ['stainless-dry', 'supplier', 'stainless_302'],
  ] as const)('%s reaches over what %s has of %s', (condition, source, state) => {
    const row = findNutFactor(source as NutFactorSource, state)
    const ends = [row?.low, row?.mean, row?.high].filter((one) => one !== undefined)
    expect(ends.length).toBeGreaterThan(0)
    expect(conditionTable[condition].low).toBeLessThanOrEqual(Math.min(...ends))
    expect(conditionTable[condition].high).toBeGreaterThanOrEqual(Math.max(...ends))
  })
})

describe('a bolt', () => {
  const m12 = { size: 'M12', class: '8.8' }

  it('leads with a torque that is rounded down, and says where its sources are far apart', () => {
    const answer = answered('bolt-torque', { ...m12, k: '0.205' })
    expect(numberOf(answer, 'highest-torque')).toBeGreaterThan(90.1)
    expect(answer.headline).toMatch(/^At most 90\.1 N·m/)
    expect(cautionsOf(answered('bolt-torque', { ...m12, condition: 'zinc' }))).toContain('friction-wide')
    expect(cautionsOf(answered('bolt-torque', { ...m12, condition: 'dry' }))).not.toContain('friction-wide')
  })

  it('on a cone rubs more than on the flat seat of the tables; an own factor holds its seat already', () => {
    const asked = { size: 'M12x1.5', torque: '100 N·m', seat: 'cone 60° 18 mm x 13 mm' }
    const { seat: _, ...flat } = asked
    const clamp = (inputs: Record<string, string>) => numberOf(answered('clamp-force', inputs), 'clamp-force')
    // By hand: μ of K 0.2 on the flat hexagon is 0.154; on the cone r_s doubles, so K is 0.303.
    expect(clamp({ ...asked, condition: 'dry' })).toBeCloseTo(100 / (0.303 * 0.012) / 1000, 0)
    expect(clamp({ ...asked, condition: 'dry' })).toBeLessThan(clamp({ ...flat, condition: 'dry' }) * 0.7)
    expect(clamp({ ...asked, k: '0.2' })).toBe(clamp({ ...flat, k: '0.2' }))
    expect(cautionsOf(answered('clamp-force', { ...asked, k: '0.2' }))).toContain('own-factor-holds-seat')
  })

  it('of stainless steel that is dry takes the row of dry stainless, and says so', () => {
    const dry = answered('bolt-torque', { size: 'M12', class: 'A2-70', condition: 'dry' })
    expect(dry.results).toEqual(
      answered('bolt-torque', { size: 'M12', class: 'A2-70', condition: 'stainless-dry' }).results,
    )
    expect(dry.given).toContainEqual(
      expect.objectContaining({ input: 'condition', text: 'stainless-dry', from: 'assumed' }),
    )
  })

  it('with a class of the other system is asked about', () => {
    expect(cautionsOf(answered('bolt-torque', { ...m12, class: 'SAE 5', k: '0.2' }))).toContain('class-of-other-system')
    expect(cautionsOf(answered('bolt-torque', { ...m12, k: '0.2' }))).not.toContain('class-of-other-system')
  })

  it('without a class is not turned past what the strongest one holds', () => {
    const turned = (turn: string) => ask('turn-angle', { size: 'M12', 'grip-length': '40 mm', turn })
    expect(codesOf(turned('90°'))).toEqual(['out-of-range'])
    expect(codesOf(turned('30°'))).toEqual([])
  })

  it.each(['0.12', '0.15'])('is never given more torque for oil on dry, whatever own factor (%s) is told', (k) => {
    const answer = answered('lubricant', { torque: '100 N·m', from: 'dry', to: 'oiled', 'k-from': k })
    const { value, low = 0, high = 0 } = resultOf(answer, 'reduced-torque')
    expect(Math.max(value, low, high)).toBeLessThanOrEqual(100)
  })
})

describe('a bar', () => {
  it('that its torque would shear is not called harmless', () => {
    const thin = answered('extension-bar', { torque: '60 N·m', length: '250 mm', diameter: '3 mm' })
    expect(thin.headline).toMatch(/^Do not use this bar: 60 N·m strains 3 mm/)
    const stout = answered('extension-bar', { torque: '60 N·m', length: '250 mm', diameter: '12 mm' })
    expect(stout.headline).not.toMatch(/^Do not/)
  })
})

describe('a hand off the grip', () => {
  it('reaches as high as the farthest pivot lets it', () => {
    const far = { setting: '100 N·m', lever: '400 mm', hand: '100 mm', 'wrench-type': 'click' }
    const { low = 0, high = 0 } = resultOf(answered('hand-position', far), 'torque')
    // p = 0.1 L alone: (360/400) (100/60).
    expect(high).toBeGreaterThan(150)
    expect(low).toBeLessThan((100 * 392 * 100) / (400 * 92))
  })

  it('with a pivot on a wrench that senses at its drive contradicts itself', () => {
    const inputs = { setting: '100 N·m', lever: '400 mm', hand: '250 mm', pivot: '40 mm', 'wrench-type': 'electronic' }
    expect(codesOf(ask('hand-position', inputs))).toEqual(['conflict'])
    expect(codesOf(ask('hand-position', { ...inputs, pivot: '0 mm' }))).toEqual([])
  })

  it('on a beam wrench asks about a grip on a pin, and about a pivot that its kind has not', () => {
    const beam = { setting: '100 N·m', lever: '400 mm', hand: '250 mm', 'wrench-type': 'beam' }
    expect(cautionsOf(answered('hand-position', beam))).toContain('floating-grip')
    expect(cautionsOf(answered('hand-position', { ...beam, pivot: '10 mm' }))).toContain('pivot-unusual')
    expect(cautionsOf(answered('hand-position', { ...beam, pivot: '100 mm' }))).not.toContain('pivot-unusual')
  })

  it('that would have to pull like nobody is told so', () => {
    expect(cautionsOf(answered('pull', { torque: '300 N·m', hand: '400 mm' }))).toContain('hard-pull')
    expect(cautionsOf(answered('pull', { torque: '100 N·m', hand: '400 mm' }))).not.toContain('hard-pull')
  })
})

describe('a span that the wrench does in part', () => {
  it('is told by the part', () => {
    const inputs = { torque: '85-95 lbf·ft', lever: '18 in', adapter: '2 in@0', most: '80 lbf·ft' }
    expect(answered('adapter-setting', inputs).headline).toMatch(/only part of what is asked: set 76\.5 lbf·ft to 80/)
    const over = { torque: '160-230 N·m', lever: '400 mm', adapter: '10 mm@90', most: '200 N·m' }
    expect(answered('adapter-setting', over).headline).toMatch(/does only 160 N·m to 200 N·m\.$/)
  })
})

describe('a check', () => {
  const low = (more: Record<string, string>, off = '4.75') =>
    ask('wrench-check', { points: `5 N·m: ${off}; 4.95; 4.95; 4.95; 4.95 N·m`, ...more })

  it('up to 10 N·m asks for the largest mark where the two limits would differ, and only there', () => {
    expect(low({}).missing.map(({ input }) => input)).toEqual(['most'])
    expect(low({ most: '25 N·m' }).results['verdict']).toMatchObject({ code: 'fail' })
    expect(low({ most: '10 N·m' }).results['verdict']).toMatchObject({ code: 'pass' })
    expect(low({}, '4.9').results['verdict']).toMatchObject({ code: 'pass' })
    expect(low({}, '4.6').results['verdict']).toMatchObject({ code: 'fail' })
  })

  it('of one point says that the scale was not checked', () => {
    const one = '100 N·m: 100; 100; 100; 100; 100 N·m'
    const three = `40 N·m: 40; 40; 40; 40; 40 N·m | 120 N·m: 120; 120; 120; 120; 120 N·m | 200 N·m: 200; 200; 200; 200; 200 N·m`
    expect(cautionsOf(answered('wrench-check', { points: one, most: '200 N·m' }))).toContain('points-missing')
    expect(cautionsOf(answered('wrench-check', { points: three, most: '200 N·m' }))).not.toContain('points-missing')
  })

  it('with a scale has no deviation where only the conversion leaves one', () => {
    const answer = answered('scale-check', { distance: '12 in', force: '50 lb', setting: '50 lbf·ft' })
    expect(resultOf(answer, 'deviation').text).toBe('0 %')
  })

  it('with a scale refuses a balance point past the pull, and a wrench that nobody lifts', () => {
    const level = { distance: '400 mm', force: '20 kg', lie: 'level', 'pull-direction': 'down' }
    const weighed = (mass: string, point: string) =>
      codesOf(ask('scale-check', { ...level, 'wrench-mass': mass, 'balance-point': point }))
    expect(weighed('1.2 kg', '180 mm')).toEqual([])
    expect(weighed('1.2 kg', '1800 mm')).toEqual(['out-of-range'])
    expect(weighed('500 kg', '200 mm')).toEqual(['out-of-range'])
  })

  it('has a window that is rounded inward', () => {
    const plan = answered('scale-plan', { most: '205 N·m', distance: '1 m' })
    expect(plan.headline).toMatch(/between 197\.2 N and 213 N/)
  })
})

it('no answer holds a brace: every place of a template is filled', () => {
  const answer = answered('prevailing', { torque: '30 N·m', 'run-on': '4 N·m' })
  expect(answer.headline).toBe('Tighten until the wrench shows 34 N·m: 30 N·m and the run-on torque of 4 N·m.')
  expect(cautionsOf(answered('prevailing', { torque: '30 N·m', 'run-on': '90 N·m' }))[0]).toBe('run-on-large')
})
