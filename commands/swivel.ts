// A universal joint between wrench and socket.
import type { Topic } from './topic.ts'

export const swivel: Topic = { name: 'swivel', shape: 'alone', question: 'swivel' }
