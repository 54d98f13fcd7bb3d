// The built program, as it is started: what runs from its sources through a loader has a larger heap and longer pauses.
const built = (path: string): Promise<unknown> => import(new URL(`../../dist/src/${path}`, import.meta.url).href)

export const builtDesk = (): Promise<typeof import('../../src/desk/desk.ts')> =>
  built('desk/desk.js') as Promise<typeof import('../../src/desk/desk.ts')>

export const builtReader = (): Promise<typeof import('../../src/asking/read-text.ts')> =>
  built('asking/read-text.js') as Promise<typeof import('../../src/asking/read-text.ts')>
