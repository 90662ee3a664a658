import { describe, expect, it } from 'vitest';
import { ANSWERS } from '../src/schemas/answers.ts';
import { WIDTH } from '../src/text/layout.ts';
import { runOn } from './support/memory-io.ts';

describe('waymend wire', () => {
  it('prints the wire, the drop and the fuse within 100 columns, and names the boat rule', async () => {
    const ran = await runOn({}, 'wire', '--amps', '8', '--metres', '5', '--insulation', '105');
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('6 mm2 or 10 AWG for 8 A');
    expect(ran.out).toContain('Fuse it at 10 A (blade fuse, red)');
    expect(ran.out).toContain('a rule for boats');
    expect(Math.max(...ran.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(WIDTH);
  });

  it('with --json prints what its schema describes', async () => {
    const ran = await runOn({}, 'wire', '--amps', '30', '--metres', '1,5', '--engine', '--json');
    const read = ANSWERS.wire.safeParse(JSON.parse(ran.out));
    expect(read.error?.issues ?? []).toEqual([]);
    expect(read.data?.asked).toMatchObject({ metresOneWay: 1.5, engineSpace: true });
  });

  it.each([
    [['--amps', 'x', '--metres', '5'], /--amps wants a number/],
    [['--amps', '8', '--metres', ''], /--metres wants a number/],
    [['--amps', '400', '--metres', '5'], /list of fuses ends at 100 A/],
    [['--amps', '8', '--metres', '5', '--volts', '48'], /12 V or 24 V/],
    [['--amps', '8', '--metres', '5', '--insulation', '70'], /insulation for 60, 75/],
  ])('refuses %j in one sentence', async (options, says) => {
    const ran = await runOn({}, 'wire', ...options);
    expect(ran.code).toBe(1);
    expect(ran.out).toBe('');
    expect(ran.err).toMatch(says);
    expect(ran.err.trim().split('\n').join(' ').split('. ')).toHaveLength(1);
  });
});
