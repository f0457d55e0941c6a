/** Measuring on photos, loaded once somebody does: the rest of the field needs none of it. */
import { useEffect, useState } from 'preact/hooks';
import type { FunctionComponent } from 'preact';
import { strings } from './strings';

type Screen = FunctionComponent<{ lot: string }>;

export function PhotoTask({ lot }: { lot: string }) {
  const [screen, setScreen] = useState<{ Screen: Screen } | 'failed' | undefined>(undefined);
  useEffect(() => {
    import('./photo/photo_screen').then(
      ({ PhotoScreen }) => setScreen({ Screen: PhotoScreen }),
      () => setScreen('failed'),
    );
  }, []);
  if (screen === undefined) return <p role="status">{strings.count.preparing}</p>;
  if (screen === 'failed') return <p role="alert">{strings.field.photoNotOpened}</p>;
  return <screen.Screen lot={lot} />;
}
