/** How far the engine is with a site of many looks, and the way to do without. */
import { useEffect, useState } from 'preact/hooks';
import { endJudging, judging, tryAgain } from './site_assessment';
import { strings } from './strings';

/** Seconds since it was first shown. */
function useSeconds(): number {
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    const began = performance.now();
    const ticking = setInterval(
      () => setSeconds(Math.round((performance.now() - began) / 1000)),
      1000,
    );
    return () => clearInterval(ticking);
  }, []);
  return seconds;
}

function Judging({ share }: { share: number }) {
  const words = strings.judging;
  const seconds = useSeconds();
  return (
    <>
      <p role="status">{share > 0 ? words.coming : words.running}</p>
      <progress max={1} {...(share > 0 ? { value: share } : {})} aria-label={words.coming} />
      <span class="muted">{words.seconds(seconds)}</span>
      <button type="button" class="button quiet" onClick={endJudging}>
        {words.end}
      </button>
    </>
  );
}

export function JudgingNotice() {
  const words = strings.judging;
  const now = judging.value;
  if (now === undefined) return null;
  return (
    <div class="judging">
      {now === 'ended' ? (
        <>
          <p role="status">{words.ended}</p>
          <button type="button" class="button quiet" onClick={tryAgain}>
            {words.again}
          </button>
        </>
      ) : (
        <Judging share={now.share} />
      )}
    </div>
  );
}
