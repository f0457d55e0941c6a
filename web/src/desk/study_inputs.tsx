/** Inputs of the pages that ask what would be; nothing typed here goes into the record. */

export function StudyLine({
  label,
  example,
  value,
  onChange,
}: {
  label: string;
  example: string;
  value: string;
  onChange: (value: string) => void;
}) {
  return (
    <label class="study-choice">
      <span>{label}</span>
      <input
        type="text"
        autocomplete="off"
        maxLength={40}
        placeholder={example}
        value={value}
        onInput={({ currentTarget }) => onChange(currentTarget.value)}
      />
    </label>
  );
}

export function StudySelect({
  label,
  value,
  options,
  none,
  onChange,
}: {
  label: string;
  value: string;
  options: readonly { value: string; label: string }[];
  /** What it says where nothing is chosen; absent where something always is. */
  none?: string;
  onChange: (value: string) => void;
}) {
  return (
    <label class="study-choice">
      <span>{label}</span>
      <select value={value} onChange={({ currentTarget }) => onChange(currentTarget.value)}>
        {none !== undefined && <option value="">{none}</option>}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </label>
  );
}

/** Items that are on offer unless they are left out. */
export function CheckedItems({
  legend,
  items,
  left,
  onChange,
}: {
  legend: string;
  items: readonly { id: string; name: string }[];
  left: ReadonlySet<string>;
  onChange: (left: ReadonlySet<string>) => void;
}) {
  const take = (id: string, taken: boolean) => {
    const next = new Set(left);
    if (taken) next.delete(id);
    else next.add(id);
    onChange(next);
  };
  return (
    <fieldset class="study-checked">
      <legend>{legend}</legend>
      {items.map(({ id, name }) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={!left.has(id)}
            onChange={({ currentTarget }) => take(id, currentTarget.checked)}
          />
          {name}
        </label>
      ))}
    </fieldset>
  );
}
