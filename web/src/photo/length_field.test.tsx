// @vitest-environment jsdom
/** A length that is typed while answers come in. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { expect, it, vi } from 'vitest';
import { LengthField } from './length_field';

it('keeps what is being typed when it is drawn anew, and says it once it is done', async () => {
  const host = document.body.appendChild(document.createElement('div'));
  const said = vi.fn();
  const draw = (value: string) =>
    act(() =>
      render(<LengthField label="Ball 1" value={value} onValue={(text) => said(text)} />, host),
    );
  await draw('');
  const input = host.querySelector('input')!;
  await act(() => {
    input.value = '12';
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
  await draw('');
  expect(input.value).toBe('12');
  expect(said).not.toHaveBeenCalled();
  await act(() => void input.dispatchEvent(new Event('change', { bubbles: true })));
  expect(said).toHaveBeenCalledWith('12 in');
  await draw('12 in');
  expect(input.value).toBe('12');
});

it('shows what comes from elsewhere once it is left, though something was typed and taken back', async () => {
  const host = document.body.appendChild(document.createElement('div'));
  const draw = (value: string) =>
    act(() => render(<LengthField label="Ball 2" value={value} onValue={() => undefined} />, host));
  await draw('');
  const input = host.querySelector('input')!;
  for (const text of ['1', '']) {
    await act(() => {
      input.value = text;
      input.dispatchEvent(new Event('input', { bubbles: true }));
    });
  }
  await act(() => void input.dispatchEvent(new Event('blur')));
  await draw('12 in');
  expect(input.value).toBe('12');
});
