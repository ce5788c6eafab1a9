/** Figures found, by name: numbers, or figures of a part. For machines. */
export interface Figures {
  readonly [name: string]: number | string | null | Figures;
}

/** What a validator found: counts, a line a person can read for each check, and the figures behind them. */
export interface ValidationResult {
  readonly passed: number;
  readonly failed: number;
  readonly lines: readonly string[];
  readonly figures?: Figures;
}

/** Checks the project against recorded or published data in a folder; says plainly where its part of the folder is absent. */
export interface Validator {
  readonly name: string;
  readonly run: (folder: string) => ValidationResult | Promise<ValidationResult>;
}

/** Runs named checks; one that throws has failed, with its message as the line. */
export function runChecks(checks: readonly (readonly [name: string, check: () => void])[]): ValidationResult {
  const outcomes = checks.map(([name, check]) => {
    try {
      check();
      return { passed: true, line: `passed  ${name}` };
    } catch (error) {
      return { passed: false, line: `FAILED  ${name}: ${error instanceof Error ? error.message : String(error)}` };
    }
  });
  const passed = outcomes.filter((outcome) => outcome.passed).length;
  return { passed, failed: outcomes.length - passed, lines: outcomes.map((outcome) => outcome.line) };
}

/** Throws where a condition does not hold. */
export function hold(condition: boolean, came: () => string): void {
  if (!condition) throw new Error(came());
}

/** The result where there was nothing to check, with the reason. */
export function nothingToCheck(why: string): ValidationResult {
  return { passed: 0, failed: 0, lines: [`absent  ${why}`] };
}
