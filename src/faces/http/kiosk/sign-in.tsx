// Where somebody signs in to write: one field, large digits, no name. Without a script as with one.
import { render } from '../../../words/render.ts'
import { type CarriedForm, carriedFields } from './carried-form.ts'
import { Keypad } from './keypad.tsx'
import { type PageParts, Shell } from './shell.tsx'

export type Trouble =
  | { readonly kind: 'wrongPin' | 'busy' | 'stale' | 'foreign' | 'noPin' }
  | { readonly kind: 'wait'; readonly seconds: number }

export const SignInPage = (
  parts: PageParts & { then: string; trouble: Trouble | undefined; carried: CarriedForm | undefined },
) => {
  const { keep } = parts.language.words
  const { trouble, then, carried } = parts
  const told =
    trouble === undefined
      ? undefined
      : trouble.kind === 'wait'
        ? render(keep.wait, () => String(trouble.seconds))
        : keep[trouble.kind]
  return (
    <Shell {...parts} title={keep.signIn}>
      <h1>{keep.signIn}</h1>
      <p class="lead">{keep.signInLead}</p>
      {told && (
        <p class="fault" role="alert">
          {told}
        </p>
      )}
      {carried && trouble?.kind !== 'noPin' && <p>{parts.language.words.writing.carried}</p>}
      {trouble?.kind !== 'noPin' && (
        <form method="post" action="/sign-in" class="pin">
          <input type="hidden" name="onward" value={then} />
          {(carried ? carriedFields(carried) : []).map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
          <div class="field">
            <label for="in-pin">{keep.pin}</label>
            <input
              id="in-pin"
              name="pin"
              type="password"
              inputmode="numeric"
              pattern="[0-9]*"
              autocomplete="off"
              maxlength={12}
              required
              data-keys=""
            />
          </div>
          <div class="actions">
            <button type="submit">{keep.enter}</button>
            <a class="key" href={then}>
              {keep.leave}
            </a>
          </div>
        </form>
      )}
      <Keypad words={parts.language.words} />
    </Shell>
  )
}
