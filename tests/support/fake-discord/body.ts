// Reads the body of a request: JSON, or multipart with files[n] and payload_json, as uploads come.

import type { IncomingMessage } from 'node:http'
import type { Upload } from './limits.ts'

export interface Body {
  body: unknown
  files: readonly Upload[]
  /** Why it could not be read. */
  unreadable?: string
}

function parse(text: string): Body {
  try {
    return { body: text === '' ? undefined : JSON.parse(text), files: [] }
  } catch {
    return { body: undefined, files: [], unreadable: 'The request body contains invalid JSON.' }
  }
}

async function readParts(bytes: Buffer, contentType: string): Promise<Body> {
  const form = await new Response(new Uint8Array(bytes), { headers: { 'content-type': contentType } }).formData()
  const files: Upload[] = []
  let payload = ''
  for (const [key, part] of form) {
    if (typeof part === 'string') {
      if (key === 'payload_json') payload = part
      continue
    }
    const content = Buffer.from(await part.arrayBuffer())
    files.push({ key, name: part.name, contentType: part.type, size: content.length, bytes: content })
  }
  return { ...parse(payload), files }
}

export async function readBody(request: IncomingMessage): Promise<Body> {
  const chunks: Buffer[] = []
  for await (const chunk of request) chunks.push(chunk as Buffer)
  return parseBody(Buffer.concat(chunks), request.headers['content-type'] ?? '')
}

export async function parseBody(bytes: Buffer, contentType: string): Promise<Body> {
  if (!contentType.startsWith('multipart/form-data')) return parse(bytes.toString('utf8'))
  try {
    return await readParts(bytes, contentType)
  } catch {
    return { body: undefined, files: [], unreadable: 'The multipart body cannot be read.' }
  }
}
