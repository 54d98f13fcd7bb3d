// A field for a day. A browser writes days its own way: beside it stands the day as it is kept, which nobody reads as another.

export const DayField = ({ id, name, value, about }: { id: string; name: string; value: string; about: string }) => (
  <>
    <input id={id} name={name} aria-describedby={about} type="date" value={value} />
    <output class="echo" for={id}>
      {value}
    </output>
  </>
)
