// What a topic is: a word that people ask under, and the questions it offers, in order. Face-neutral.
import type { QuestionName } from '../src/questions/index.ts'
import type { en } from '../src/words/en/index.ts'

export type TopicName = keyof (typeof en)['topics']
export type OfferWord = keyof (typeof en)['offers']
/** What can be done with the register where a topic says so: added, shown, noted. */
export type RegisterWord = keyof (typeof en)['chatRegister']['offers']

/** What can be done with bench runs where a topic says so. */
export type RunWord = keyof (typeof en)['bench']['offers']

export interface Offer {
  readonly word: OfferWord
  readonly question: QuestionName
}

/**
 * `alone`: the topic is one question. `find`: one set of inputs, and an option `find` that says what is wanted, the
 * first offer by default. `parts`: each offer is asked under its own word. `text`: free text, of which the question is found.
 * `settings`: nothing is asked; what is set where people talk.
 */
export type Topic =
  | { readonly name: TopicName; readonly shape: 'alone'; readonly question: QuestionName }
  | { readonly name: TopicName; readonly shape: 'text' }
  | { readonly name: TopicName; readonly shape: 'settings' }
  | { readonly name: TopicName; readonly shape: 'find'; readonly offers: readonly Offer[] }
  | {
      readonly name: TopicName
      readonly shape: 'parts'
      readonly offers: readonly Offer[]
      readonly register?: readonly RegisterWord[]
      readonly runs?: readonly RunWord[]
    }

export const offersOf = (topic: Topic): readonly QuestionName[] =>
  topic.shape === 'text' || topic.shape === 'settings'
    ? []
    : topic.shape === 'alone'
      ? [topic.question]
      : topic.offers.map(({ question }) => question)
