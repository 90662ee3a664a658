import { aboutOneIn, grouped, percent } from '@waymend/planner/words/chance';
import { loadText, massText } from '@waymend/planner/words/mass';
import { describe, expect, it } from 'vitest';

describe('chances in words', () => {
  it.each([
    [0.125, 'about 1 in 8'],
    [0.0345, 'about 1 in 29'],
    [0.00231, 'about 1 in 430'],
    [0.61, 'about 6 in 10'],
    [0.36, 'about 1 in 3'],
    [0.38, 'about 4 in 10'],
    [0.00001, 'less than 1 in 10,000'],
    [0, 'never, by this model'],
  ])('%f reads "%s"', (p, words) => {
    expect(aboutOneIn(p)).toBe(words);
  });
  it('keeps percentages to two or three figures', () => {
    expect([0.1247, 0.0312, 0.00451, 0].map(percent)).toEqual(['12 %', '3.1 %', '0.45 %', '0 %']);
  });
  it('sets thousands apart', () => {
    expect([0, 999, 1000, 1234567].map(grouped)).toEqual(['0', '999', '1,000', '1,234,567']);
  });
});

describe('masses in words', () => {
  it.each([
    [45, '45 g'],
    [640, '640 g'],
    [3912, '3.91 kg'],
    [38240, '38.2 kg'],
    [2840000, '2,840 kg'],
  ])('%f g reads %s', (g, words) => {
    expect(massText(g)).toBe(words);
  });
  it('speaks pounds and ounces: 139.2 lb is 63.1 kg (exact pound of 1959)', () => {
    expect(massText(63140, 'inch')).toBe('139 lb');
    expect(massText(100, 'inch')).toBe('3.53 oz');
    expect(loadText(1000, 'inch')).toBe('2,205 lb');
  });
});
