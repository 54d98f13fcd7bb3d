// Every text that people read, in German. Shape and places are those of the English words; what is missing does not compile.
import { inShape } from '../shape.ts'
import { asking } from './asking.ts'
import { bench } from './bench.ts'
import { cautions, pointers } from './cautions.ts'
import { chat } from './chat.ts'
import { chatRegister } from './chat-register.ts'
import { checking } from './checking.ts'
import { choices } from './choices.ts'
import { deviation } from './deviation.ts'
import { digest } from './digest.ts'
import { faces, page } from './faces.ts'
import { faults } from './faults.ts'
import { faultsRegister } from './faults-register.ts'
import { figures } from './figures.ts'
import { history } from './history.ts'
import { inputs } from './inputs.ts'
import { keep } from './keep.ts'
import { kiosk } from './kiosk.ts'
import { matterTopics } from './matter-topics.ts'
import { matters } from './matters.ts'
import { mattersCare } from './matters-care.ts'
import { mattersPull } from './matters-pull.ts'
import { codes, kinds, offers, questions, results, standings, topics } from './names.ts'
import { problems } from './problems.ts'
import { register } from './register.ts'
import { sayChecks } from './say-checks.ts'
import { sayJoint } from './say-joint.ts'
import { sayReach } from './say-reach.ts'
import { writing } from './writing.ts'

export const de = inShape({
  say: { ...sayReach, ...sayJoint, ...sayChecks, ...mattersCare, ...mattersPull, ...matters.say, ...asking.say },
  cautions: { ...matters.cautions, ...asking.cautions, ...cautions, ...bench.cautions },
  pointers,
  codes,
  questions: { ...matters.questions, ...questions },
  topics: { ...matters.topics, ...asking.topics, ...topics },
  offers,
  inputs: { ...matters.inputs, ...asking.inputs, ...inputs, ...bench.asking },
  results: { ...matters.results, ...asking.results, ...results },
  kinds,
  faults: {
    ...matters.faults,
    ...asking.faults,
    ...checking.faults,
    ...faults,
    ...faultsRegister,
    ...writing.faults,
    ...bench.faults,
  },
  figures,
  choices,
  page: { ...asking.page, ...page },
  standings,
  faces: { ...asking.faces, ...faces },
  problems: { ...writing.problems, ...problems, ...bench.problems },
  register: {
    ...register,
    inputs: { ...register.inputs, ...bench.inputs, margin: inputs.margin, confidence: inputs.confidence },
  },
  kiosk,
  keep: {
    ...keep,
    kinds: { ...keep.kinds, ...bench.kinds },
    forms: { ...keep.forms, ...bench.forms },
    corrections: { ...keep.corrections, ...bench.corrections },
    labels: {
      ...keep.labels,
      ...bench.labels,
      margin: inputs.margin.label,
      confidence: inputs.confidence.label,
    },
  },
  checking,
  chat: { ...chat, names: { ...chat.names, ...bench.names } },
  chatRegister,
  deviation,
  digest: { ...digest, parts: { ...digest.parts, again: bench.digest } },
  history,
  matterTopics,
  writing,
  bench,
})
