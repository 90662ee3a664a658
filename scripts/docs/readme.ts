/** Lines of the kit, and of what follows it, that the README shows before it points to the whole. */
const KIT_LINES = 12;

const BLOCK = /(<!-- demo:.*? -->\n)[\s\S]*?(<!-- \/demo -->)/;

/** The README with the beginning of the demo's plan between its two marks; unchanged when it has none. */
export function withDemo(readme: string, plan: string): string {
  const lines = plan.split('\n');
  const kit = lines.findIndex((line) => line.startsWith('Comes along'));
  const shown = lines.slice(0, kit + KIT_LINES).join('\n');
  const text = `\`\`\`text\n${shown}\n  ...\n\`\`\`\n\n[The whole plan](docs/demo-plan.txt).\n`;
  // A function, so that nothing in the plan is taken for a pattern.
  return readme.replace(BLOCK, (_, before: string, after: string) => `${before}${text}${after}`);
}
