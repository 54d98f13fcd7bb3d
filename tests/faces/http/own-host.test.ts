// By which names a desk may be written to: numbers, names of the local network, and the one that it was told.
import { expect, it } from 'vitest'
import { isOwnHost } from '../../../src/faces/http/kiosk/own-host.ts'

it.each([
  ['127.0.0.1:8080', true],
  ['10.0.0.7', true],
  ['[::1]:8080', true],
  ['[fe80::1]', true],
  ['localhost:80', true],
  ['desk', true],
  ['Desk:8080', true],
  ['desk.local', true],
  ['desk.local.:8080', true],
  ['desk.lan', true],
  ['desk.home.arpa', true],
  ['torque.garage.example', true],
  ['torque.garage.example:443', true],
  ['other.garage.example', false],
  ['garage.example', false],
  ['torque.garage.example.elsewhere.example', false],
  ['127.0.0.1.elsewhere.example', false],
  ['local.example', false],
  ['desk.local@elsewhere.example', false],
  ['', false],
  ['a b', false],
])('%s: %s', (host, isOwn) => expect(isOwnHost(host, 'https://torque.garage.example/desk')).toBe(isOwn))

it('without PUBLIC_URL no name of the wide world is ours', () => {
  expect(isOwnHost('torque.garage.example', undefined)).toBe(false)
})
