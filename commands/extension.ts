// Bars in line under the drive.
import type { Topic } from './topic.ts'

export const extension: Topic = { name: 'extension', shape: 'alone', question: 'extension-bar' }
