import { render } from 'preact';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { EngineText, engineText } from './engine_text';
import { ProblemWords } from './engine_problem';
import type { Problem } from './findings';
import { loadWords } from './strings';

function shown(what: preact.JSX.Element): string {
  const place = document.createElement('div');
  render(what, place);
  return place.innerHTML;
}

const verdict = 'Go on counting: 7 limits are still open. What nobody translated.';

describe('in Spanish, what the engine wrote', () => {
  beforeAll(() => loadWords('es'));
  afterAll(() => loadWords('en'));

  it('is drawn again once the words for it are there', async () => {
    const place = document.createElement('div');
    render(<EngineText text="wind speed over water" of="meaning" />, place);
    expect(place.innerHTML).toBe('<span lang="en">wind speed over water</span>');
    await expect.poll(() => place.innerHTML).toBe('velocidad del viento sobre el agua');
  });

  it('is shown sentence by sentence; what is not known says that it is English', () => {
    expect(shown(<EngineText text={verdict} />)).toBe(
      'Siga contando: faltan 7 límites por decidir. <span lang="en">What nobody translated.</span>',
    );
    expect(engineText(verdict)).toBe(
      'Siga contando: faltan 7 límites por decidir. What nobody translated.',
    );
  });

  it('is read as a title where it stands as one', () => {
    expect(shown(<EngineText text="Filter of Outer bank" of="title" />)).toBe(
      'Filtro de Outer bank',
    );
    expect(shown(<EngineText text="Rock in a hurry" />)).toBe(
      '<span lang="en">Rock in a hurry</span>',
    );
  });

  it('is told from what the screens say themselves', () => {
    const problem = { code: 'x', file: '', where: '', what: 'Falta algo.', allowed: '' };
    expect(shown(<ProblemWords problem={problem} />)).toBe('Falta algo.');
    const ofEngine: Problem = {
      ...problem,
      sentence: '“12” has no unit. Allowed: ft, in, yd.',
      what: '“12” has no unit.',
      allowed: 'ft, in, yd',
    };
    expect(shown(<ProblemWords problem={ofEngine} />)).toBe(
      '«12» no tiene unidad. Se admite: ft, in, yd',
    );
  });
});

it('in English, what the engine wrote stands as it is', () => {
  expect(shown(<EngineText text={verdict} />)).toBe(verdict);
});
