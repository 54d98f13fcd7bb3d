// The page on which a screen is set up once: its real size, how far away it is read, whether it is shared.

import { contrasts, distances, idles, keyWhen, type ScreenSetting } from './screen-setting.ts'
import { type PageParts, Shell } from './shell.tsx'

interface Option {
  readonly value: string
  readonly label: string
}

const Choice = ({ name, label, value, options }: { name: string; label: string; value: string; options: Option[] }) => (
  <div class="field">
    <label for={`in-${name}`}>{label}</label>
    <select id={`in-${name}`} name={name}>
      {options.map((one) => (
        <option key={one.value} value={one.value} selected={one.value === value}>
          {one.label}
        </option>
      ))}
    </select>
  </div>
)

export const ScreenPage = (parts: PageParts & { setting: ScreenSetting; isKept: boolean }) => {
  const { kiosk } = parts.language.words
  const { setting, isKept } = parts
  return (
    <Shell {...parts} title={kiosk.screen}>
      <h1>{kiosk.screen}</h1>
      <p class="lead">{kiosk.screenLead}</p>
      {isKept && (
        <p class="kept" role="status">
          {kiosk.saved}
        </p>
      )}
      <form method="get" action="/screen">
        <p>{kiosk.cardText}</p>
        <div id="card" aria-hidden="true" />
        <div class="actions">
          <button type="button" data-wider="-4" hidden>
            {kiosk.narrower}
          </button>
          <button type="button" data-wider="4" hidden>
            {kiosk.wider}
          </button>
        </div>
        <fieldset>
          <legend class="quiet">{kiosk.screen}</legend>
          <div class="field">
            <label for="in-mm">{kiosk.perMm}</label>
            <input type="text" id="in-mm" name="mm" value={String(setting.mm)} inputmode="decimal" autocomplete="off" />
          </div>
          <div class="field">
            <label for="in-key">{kiosk.keySize}</label>
            <input
              type="text"
              id="in-key"
              name="key"
              value={String(setting.key)}
              inputmode="decimal"
              autocomplete="off"
            />
          </div>
          <Choice
            name="far"
            label={kiosk.distance}
            value={setting.far}
            options={distances.map((value) => ({ value, label: kiosk.distances[value] }))}
          />
          <Choice
            name="idle"
            label={kiosk.shared}
            value={setting.idle}
            options={idles.map((value) => ({ value, label: value === '0' ? kiosk.never : kiosk.minutes[value] }))}
          />
          <Choice
            name="keys"
            label={kiosk.ownKeys}
            value={setting.keys}
            options={keyWhen.map((value) => ({ value, label: kiosk.keysWhen[value] }))}
          />
          <Choice
            name="contrast"
            label={kiosk.contrast}
            value={setting.contrast}
            options={contrasts.map((value) => ({ value, label: kiosk.contrasts[value] }))}
          />
        </fieldset>
        <div class="actions">
          <button type="submit">{kiosk.save}</button>
        </div>
      </form>
    </Shell>
  )
}
