// Where a statement or a number comes from, and how far that carries.

export type Standing = 'published' | 'common practice' | 'from memory' | 'measured here' | 'worked out'

export interface Citation {
  readonly title: string
  readonly where: string
  readonly standing: Standing
}

export const citations = {
  statics: { title: 'Statics', where: 'moment of a pull about the fastener', standing: 'worked out' },
  adapterRule: {
    title: 'US Army TM 9-254, torque wrench',
    where: 'angled extension, figures 4-5 and 4-6',
    standing: 'published',
  },
  aviationRule: { title: 'FAA AC 43.13-1B', where: 'paragraph 7-40, figure 7-2', standing: 'from memory' },
  pivotPractice: {
    title: 'Common practice: pivot offset by kind of wrench',
    where: 'no published source',
    standing: 'common practice',
  },
  doubtPractice: {
    title: 'Common practice: how well lengths, angles and the hand are known',
    where: 'no published source',
    standing: 'common practice',
  },
  gum: {
    title: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
    where: '5.1, 4.3.7, annex G',
    standing: 'published',
  },
  nutFactor: {
    title: "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed.",
    where: 'equation 8-27',
    standing: 'published',
  },
  nextBolt: {
    title: 'Prediction interval of one further value',
    where: 'mean ± t s √(1 + 1/n)',
    standing: 'worked out',
  },
  deviation: { title: 'ISO 6789-1:2017', where: 'relative deviation', standing: 'from memory' },
  limits: {
    title: 'ISO 6789:2003 as quoted by a tool manual; Acta IMEKO 4(2) 2015',
    where: 'limits by the largest torque; article, section 5',
    standing: 'published',
  },
  plan: { title: 'ISO 6789:2003 as summarised', where: 'points, pulls, temperature', standing: 'published' },
  classLimits: { title: 'ISO 6789-1:2017', where: 'limits by kind and class', standing: 'from memory' },
  guardBand: { title: 'ILAC-G8:09/2019', where: 'decision rules, guard band w = U', standing: 'published' },
  checkInterval: {
    title: 'ISO 6789-1:2017',
    where: '12 months or 5000 uses; after overload, repair or mishandling',
    standing: 'from memory',
  },
  woundUp: {
    title: 'Common practice: a wrench left wound up',
    where: 'no published source',
    standing: 'common practice',
  },
  fieller: { title: 'Fieller 1954', where: 'interval of a ratio of two means', standing: 'from memory' },
  twoOneSided: { title: 'Schuirmann 1987', where: 'two one-sided tests', standing: 'from memory' },
  resolution: { title: 'JCGM 100:2008', where: 'F.2.2.1, resolution of what is read', standing: 'published' },
  quarterRule: {
    title: 'ISO 6789-2:2017; ASME B107.300-2021',
    where: '4.3; 6.3(a)',
    standing: 'published',
  },
  cardan: {
    title: 'Single Cardan joint, velocity ratio (handbooks of machine design)',
    where: 'cos β to 1/cos β in a turn',
    standing: 'from memory',
  },
  swivelManuals: {
    title: 'Torque Setting Criteria (maintenance bulletin); Continental IO-240 manual',
    where: 'example D; figure B-2: up to 15° without a correction',
    standing: 'published',
  },
  swivelPractice: {
    title: 'Common practice: friction and side load in a bent swivel',
    where: 'no published source',
    standing: 'common practice',
  },
  twist: { title: 'Torsion of a round bar; G of steel 79.3 GPa', where: 'handbooks', standing: 'from memory' },
  energy: { title: 'Conservation of energy', where: 'torque times turns, less losses', standing: 'worked out' },
  efficiencyPractice: {
    title: 'Common practice: efficiency of torque multipliers 0.75 to 0.95',
    where: 'no published source',
    standing: 'common practice',
  },
  runOnAviation: { title: 'FAA AC 43.13-1B', where: 'paragraph 7-40: run-on torque is added', standing: 'from memory' },
  runOnArmy: {
    title: 'US Army TM 5-2330-325-13&P',
    where: 'WP 0095: added from a third of the target on',
    standing: 'published',
  },
  wedge: {
    title: 'VDI 2230 Part 1, ISO 16047:2005: torque by the friction of thread and seat',
    where: 'equations, wedge form',
    standing: 'from memory',
  },
  iso16047: { title: 'ISO 16047:2005', where: 'clause 8: total friction', standing: 'from memory' },
  strength: {
    title: 'VDI 2230 Part 1: pull and twist together',
    where: 'reduced stress, plastic twist modulus',
    standing: 'from memory',
  },
  springs: {
    title: "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed.",
    where: 'equations 8-17, 8-20 to 8-22',
    standing: 'published',
  },
  turn: { title: 'Turn of the nut from snug', where: 'bolt and joint as two springs', standing: 'worked out' },
  guard: { title: 'ILAC-G8:09/2019', where: 'clause 4.2: guard band w = U', standing: 'published' },
  welch: { title: 'Welch 1947; Satterthwaite 1946', where: 'difference of two means', standing: 'from memory' },
  si: { title: 'NIST SP 811 (2008), Guide for the Use of the SI', where: 'appendix B.8', standing: 'published' },
} as const satisfies Record<string, Citation>
