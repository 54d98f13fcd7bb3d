// Named interactions, each composed by spreading another: what people send in the tests. Give one to the fake's
// `interaction`, with whatever differs spread over it.

import { type Ask, people, places } from './ask.ts'

const slash: Ask = { kind: 'slash', user: people.asker, guild: places.shop, channel: places.channel, locale: 'en-US' }
const autocomplete: Ask = { ...slash, kind: 'autocomplete' }
const press: Ask = { ...slash, kind: 'component', componentType: 2 }
const submit: Ask = { ...slash, kind: 'modal' }

const adapterSetting: Ask = {
  ...slash,
  command: 'adapter',
  options: { torque: '95 N·m', lever: '380 mm', adapter: '45 mm' },
}

export const interactions = {
  slash,
  autocomplete,
  press,
  submit,
  adapterSetting,
  adapterReading: {
    ...adapterSetting,
    options: { reading: '95 N·m', lever: '380 mm', adapter: '45 mm', find: 'reading' },
  },
  adapterAtAngle: { ...adapterSetting, options: { ...adapterSetting.options, adapter: '45 mm@90' } },
  adapterInPounds: { ...adapterSetting, options: { torque: '70 ft-lb', lever: '14 1/2 in', adapter: '2 in' } },
  adapterWithoutLength: { ...adapterSetting, options: { torque: '95 N·m', lever: '380 mm' } },
  adapterWithoutUnit: { ...adapterSetting, options: { ...adapterSetting.options, torque: '95' } },
  adapterInGerman: {
    ...adapterSetting,
    locale: 'de',
    options: { torque: '13,5 Nm', lever: '380 mm', adapter: '45 mm' },
  },
  handPosition: {
    ...slash,
    command: 'hand',
    subcommand: 'position',
    options: { setting: '95 N·m', lever: '380 mm', hand: '340 mm', pivot: '20 mm' },
  },
  direct: { ...adapterSetting, guild: null },
  elsewhere: { ...adapterSetting, guild: places.elsewhere },
  byAnother: { ...adapterSetting, user: people.other },
  tooOld: { ...adapterSetting, age: 4000 },
  workThisOut: {
    ...slash,
    kind: 'message-command',
    command: 'Work this out',
    message: 'what do I set for 95 Nm with a 45 mm crowfoot on a 380 mm wrench?',
  },
} satisfies Record<string, Ask>
