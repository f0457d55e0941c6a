/** The desk, loaded once somebody goes there: what a phone in the field does not need comes later. */
import { useEffect, useState } from 'preact/hooks';
import type { FunctionComponent } from 'preact';
import type { DeskPlace } from './places';
import { strings } from './strings';

type Screen = FunctionComponent<{ place: DeskPlace }>;

export function Desk({ place }: { place: DeskPlace }) {
  const [screen, setScreen] = useState<{ Screen: Screen } | 'failed' | undefined>(undefined);
  useEffect(() => {
    import('./desk/desk_screen').then(
      ({ DeskScreen }) => setScreen({ Screen: DeskScreen }),
      () => setScreen('failed'),
    );
  }, []);
  if (screen === undefined) return <p role="status">{strings.desk.opening}</p>;
  if (screen === 'failed') return <p role="alert">{strings.desk.notOpened}</p>;
  return <screen.Screen place={place} />;
}
