// The languages that a chat client may be set to, as it names them: what numbers look like to the people who ask.

export const chatLocales = (
  'id da de en-GB en-US es-ES es-419 fr hr it lt hu nl no pl pt-BR ro fi sv-SE vi tr cs el bg ru uk hi th zh-CN ja ' +
  'zh-TW ko'
).split(' ')
