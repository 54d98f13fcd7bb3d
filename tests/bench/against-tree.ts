// Another commit of this repository, checked out beside it and built, and taken away again whatever happens.
import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { root } from '../support/service.ts'

const exec = promisify(execFile)

const git = async (...words: readonly string[]): Promise<string> =>
  (await exec('git', ['-C', root, ...words])).stdout.trim()

/** The full name of a commit. Throws one sentence where there is none of this name. */
export const commitOf = (name: string): Promise<string> =>
  git('rev-parse', '--verify', '--quiet', '--end-of-options', `${name}^{commit}`).catch(() => {
    throw new Error(`there is no commit “${name}” in this repository`)
  })

const lockOf = (folder: string): string => readFileSync(join(folder, 'package-lock.json'), 'utf8')

export interface Tree {
  readonly folder: string
  readonly commit: string
  readonly remove: () => Promise<void>
}

/** Checks a commit out and builds it; with the packages of this tree where both lock the same ones. */
export const checkOut = async (name: string, signal: AbortSignal): Promise<Tree> => {
  const commit = await commitOf(name)
  const above = mkdtempSync(join(tmpdir(), 'armlength-against-'))
  const folder = join(above, 'tree')
  const remove = async (): Promise<void> => {
    rmSync(above, { recursive: true, force: true })
    await git('worktree', 'prune')
  }
  try {
    await git('worktree', 'add', '--detach', folder, commit)
    const within = { cwd: folder, signal, maxBuffer: 64 * 1024 * 1024 }
    if (lockOf(folder) === lockOf(root)) symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'dir')
    else await exec('npm', ['ci', '--no-audit', '--no-fund'], within)
    await exec(process.execPath, [join(folder, 'node_modules/typescript/bin/tsc'), '-b'], within)
    return { folder, commit, remove }
  } catch (error) {
    await remove()
    throw error
  }
}
