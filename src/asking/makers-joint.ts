// Joints that a life hangs on, and vehicles: what their bolts are tightened to is their maker's to say, however a size and a class
// are told beside them. The same bolt may sit in a joint that slips, gives or is tightened in stages.
import type { Scene } from './scene.ts'

const vehicles =
  'cars?|vans?|lorr(?:y|ies)|trucks?|suvs?|vehicles?|automobiles?|hatchbacks?|sedans?|saloons?|pickups?|minivans?|campers?|caravans?|' +
  'motor ?cycles?|motor ?bikes?|scooters?|mopeds?|bikes?|bicycles?|atvs?|quads?|tractors?|trailers?|fork ?lifts?|boats?|aircraft|' +
  'air ?planes?|aeroplanes?|helicopters?|gliders?|engines?'

const parts =
  'wheels?|wheel ?(?:nut|bolt|stud)s?|lug ?(?:nut|bolt|stud)s?|rims?|alloys|t[iy]res?|axles?|(?:wheel|front|rear) hubs?|' +
  'hub (?:nut|bolt)s?|brak(?:e|es|ing)(?![ -]press)|calipers?|' +
  'suspensions?|shock absorbers?|struts?|control arms?|wishbones?|trailing arms?|swing ?arms?|ball ?joints?|sub ?frames?|' +
  '(?:sway|anti ?-?roll) bars?|drop links?|steering|tie rods?|track rods?|handlebars?|seat ?belts?|airbags?|' +
  'tow ?(?:bar|ball|hitch|hook)s?|cv joints?|cylinder heads?|con(?:necting)? ?rods?|crank ?shafts?|propellers?|keels?'

// The same without accents: one such word is clear in a text of any language, too short to tell which it is in.
const german =
  String.raw`rad(?:schraube|bolzen|mutter|nabe|lager)\w*|rader|felgen?|brems\w*|fahrwerk\w*|querlenker\w*|sto(?:ss|ß)dampfer\w*|` +
  String.raw`federbein\w*|radaufhangung\w*|achsschenkel\w*|achstrager\w*|lenk(?:ung|getriebe|rad|stange)\w*|spurstange\w*|` +
  'autos?|pkws?|lkws?|fahrzeuge?s?|motorrad(?:er)?|anhanger(?:kupplung)?|sicherheitsgurte?|zylinderkopf'
// What brakes a nut or a thread there is a lock; its first word may have been put into English already.
const french =
  String.raw`roues?|jantes?|(?<!\b(?:ecrous?|rondelles?|washers?|couple de) )freins?(?! ?filet)|etriers?|amortisseurs?|` +
  '(?:triangle|bras) de suspension|(?:biellette|cremaillere|rotule|colonne) de direction|voitures?|vehicules?|camions?|camionnettes?|' +
  'motos?|remorques?|attelages?|culasses?'
const spanish =
  String.raw`ruedas?|llantas?|(?<!\b(?:arandelas?|washers?) (?:de|of|from) )frenos?|amortiguador(?:es)?|(?:caja|cremallera|terminal|columna) de direccion|` +
  'coches?|carros?|vehiculos?|camion(?:es)?|camionetas?|furgonetas?|motocicletas?|remolques?|culatas?'

// Wheels and brakes of machines are no vehicle's, and a caliper that measures is a tool.
const ofMachines = String.raw`(?<!\b(?:hand|grinding|cutting|polishing|worm|gear|belt|fly|press|vernier|digital|dial)[ -]?)`

const makers = new RegExp(String.raw`\b${ofMachines}(?:${[vehicles, parts, german, french, spanish].join('|')})\b`)

/** Whether a text names a vehicle, or a wheel, a brake, the suspension or the steering of one. */
export const isMakersJoint = ({ folded }: Scene): boolean => makers.test(folded.normalize('NFD').replace(/\p{M}/gu, ''))
