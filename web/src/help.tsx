/** The help, loaded once somebody asks for it. */
import { useEffect, useState } from 'preact/hooks';
import type { FunctionComponent } from 'preact';
import { strings } from './strings';

type Screen = FunctionComponent<{ page?: string }>;

export function Help({ page }: { page?: string | undefined }) {
  const [screen, setScreen] = useState<{ Screen: Screen } | 'failed' | undefined>(undefined);
  useEffect(() => {
    import('./help/help_screen').then(
      ({ HelpScreen }) => setScreen({ Screen: HelpScreen }),
      () => setScreen('failed'),
    );
  }, []);
  if (screen === undefined) return <p role="status">{strings.help.opening}</p>;
  if (screen === 'failed') return <p role="alert">{strings.help.notOpened}</p>;
  return <screen.Screen {...(page === undefined ? {} : { page })} />;
}
