/** What the check of rule files says beside the errors themselves. */
export const checkWords = {
  sound: (rules: number, cases: number) => `sound: ${rules} rules, ${cases} cases`,
  toMend: (errors: number) => `${errors} to mend`,
  doesNotLoad: 'nothing of it is used',
  toLookAt: (warnings: number) => `${warnings} to look at`,
  severities: { error: 'error', warning: 'warning' },
  what: 'What',
  why: 'Why',
  fix: 'Fix',
  reason: (expected: string, came: string) => `Expected ${expected}; came ${came}.`,
  nearest: (name: string) => `Nearest right name: ${name}.`,
  watching: 'Checked again on every change; Ctrl+C ends it.',
};
