// What Discord tells of the bot's own application: its id, and whether strangers may take it into servers of their own.
import { DiscordAPIError, type REST, Routes } from 'discord.js'

export interface Application {
  readonly id: string | undefined
  readonly isOpenToAll: boolean
}

/** Throws where Discord is away; where it refuses, nothing is known of it. */
export const askApplication = async (rest: Pick<REST, 'get'>): Promise<Application> => {
  try {
    const told = (await rest.get(Routes.currentApplication())) as {
      readonly id?: unknown
      readonly bot_public?: unknown
    }
    return { id: typeof told.id === 'string' ? told.id : undefined, isOpenToAll: told.bot_public === true }
  } catch (error) {
    if (error instanceof DiscordAPIError) return { id: undefined, isOpenToAll: false }
    throw error
  }
}
