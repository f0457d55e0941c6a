/** One button of several of which one holds. */
export function Switch<Name extends string | number>({
  label,
  names,
  value,
  onValue,
}: {
  label: string;
  names: { value: Name; label: string }[];
  value: Name;
  onValue: (value: Name) => void;
}) {
  return (
    <div
      class={names.length === 4 ? 'photo-tools in-fours' : 'photo-tools'}
      role="group"
      aria-label={label}
    >
      {names.map((one) => (
        <button
          key={one.value}
          type="button"
          class="button quiet"
          aria-pressed={one.value === value}
          onClick={() => onValue(one.value)}
        >
          {one.label}
        </button>
      ))}
    </div>
  );
}
