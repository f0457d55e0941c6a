import { expect, it } from 'vitest';
import { positionFrom } from './device_position';

const noon = Date.UTC(2026, 4, 20, 12);

it('writes a fix as the document holds it', () => {
  expect(positionFrom({ latitude: 39.7392131, longitude: -104.99, accuracy: 5.6 }, noon)).toEqual({
    latitude: '39.739213°',
    longitude: '-104.990000°',
    accuracy: '6 m',
    when: '2026-05-20T12:00:00Z',
  });
});

it.each([0, -1, NaN, Infinity])('says nothing of an accuracy of %d', (accuracy) => {
  expect(positionFrom({ latitude: 0, longitude: 0, accuracy }, noon)).not.toHaveProperty(
    'accuracy',
  );
});

it('makes nothing of a fix without numbers', () => {
  expect(positionFrom({ latitude: NaN, longitude: 0, accuracy: 5 }, noon)).toBeUndefined();
  expect(positionFrom({ latitude: 0, longitude: Infinity, accuracy: 5 }, noon)).toBeUndefined();
});
