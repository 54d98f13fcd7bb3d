// A port on loopback that can be closed to new connections and opened again under the same number, so that a client
// meets a real ECONNREFUSED.

import { once } from 'node:events'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'

export interface Door {
  port: number
  refuse(on: boolean): Promise<void>
  close(): Promise<void>
}

export async function openDoor(server: Server): Promise<Door> {
  server.listen(0, '127.0.0.1')
  await once(server, 'listening')
  const { port } = server.address() as AddressInfo
  return {
    port,
    async refuse(on) {
      if (on && server.listening) {
        server.close()
        server.closeIdleConnections()
      }
      if (!on && !server.listening) {
        server.listen(port, '127.0.0.1')
        await once(server, 'listening')
      }
    },
    async close() {
      const closed = server.listening ? new Promise((resolve) => server.close(resolve)) : undefined
      server.closeAllConnections()
      await closed
    },
  }
}
