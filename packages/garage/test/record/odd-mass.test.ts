import { describe, expect, it } from 'vitest';
import { isOddMass } from '../../src/record/odd-mass.ts';

describe('masses an owner is asked about (estimate, no source)', () => {
  it('asks at more than four times or less than a quarter of what is usual', () => {
    expect(isOddMass(1640, 410)).toBe(false);
    expect(isOddMass(1641, 410)).toBe(true);
    expect(isOddMass(1000, 4000)).toBe(false);
    expect(isOddMass(999, 4000)).toBe(true);
  });
  it('never asks about 100 g either way', () => {
    expect(isOddMass(110, 10)).toBe(false);
    expect(isOddMass(111, 10)).toBe(true);
  });
  it('asks about an own thing under a gram or heavier than a wheel', () => {
    expect(isOddMass(0, null)).toBe(true);
    expect(isOddMass(1, null)).toBe(false);
    expect(isOddMass(60_001, null)).toBe(true);
  });
});
