/** A margin as a line: a dot with its limits, against the mark of a margin that just holds. */
import type { Margin } from './findings';

/** Margins from 0 to 2 are drawn; what lies beyond ends in an arrow at the edge. */
const widest = 2;
const width = 240;
const height = 32;
const middle = 15;
const inset = 8;

function across(ratio: number): number {
  const share = Math.min(Math.max(ratio / widest, 0), 1);
  return inset + share * (width - 2 * inset);
}

export function MarginBar({ margin }: { margin: Margin }) {
  const low = margin.low ?? margin.value;
  const high = margin.high ?? margin.value;
  const holds = across(1);
  return (
    <svg
      class="margin-bar"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
    >
      <line class="ground" x1={inset} x2={width - inset} y1={middle} y2={middle} />
      <line class="holds" x1={holds} x2={holds} y1={3} y2={height - 5} />
      {high > low && (
        <line class="spread" x1={across(low)} x2={across(high)} y1={middle} y2={middle} />
      )}
      {margin.value > widest ? (
        <path
          class="dot"
          d={`M${width - inset - 7} ${middle - 6}L${width - 1} ${middle}L${width - inset - 7} ${middle + 6}Z`}
        />
      ) : (
        <circle class="dot" cx={across(margin.value)} cy={middle} r={6} />
      )}
    </svg>
  );
}
