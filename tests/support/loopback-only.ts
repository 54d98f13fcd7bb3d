// The network is denied to every test but for loopback: a forgotten call to the outside fails here, by name.
import { Socket } from 'node:net'

type Connect = Socket['connect']
const connect = Socket.prototype.connect as (...args: unknown[]) => Socket

const hostOf = (args: readonly unknown[]): string | undefined => {
  const [first, second] = (Array.isArray(args[0]) ? args[0] : args) as readonly unknown[]
  if (typeof first === 'object' && first !== null) {
    const { path, host } = first as { path?: string; host?: string }
    return path ? undefined : (host ?? 'localhost')
  }
  return typeof first === 'number' ? (typeof second === 'string' ? second : 'localhost') : undefined
}

Socket.prototype.connect = function guarded(this: Socket, ...args: unknown[]): Socket {
  const host = hostOf(args)
  if (host !== undefined && !/^(localhost|127\.\d+\.\d+\.\d+|::1|\[::1\])$/.test(host)) {
    throw new Error(`a test tried to reach ${host}: only loopback is allowed`)
  }
  return connect.apply(this, args)
} as Connect
