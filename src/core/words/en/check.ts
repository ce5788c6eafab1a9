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
  begun: {
    wrote: (folder: string) => `Written into ${folder}:`,
    offered:
      'While it lies under rules/, people are offered it. It says “do not spray” to all until somebody answers that the rules are approved.',
    noSchemas: 'It lies outside rules/, so that no file names its schema for an editor.',
    invented:
      'Every limit is invented. Replace what says so, with its source; have a qualified adviser approve it, then take out rules-not-approved and draft-rules.',
    next: 'Next:',
  },
  watching: 'Checked again on every change; Ctrl+C ends it.',
};
