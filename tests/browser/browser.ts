import { execFileSync } from 'node:child_process';
import sparticuz from '@sparticuz/chromium';
import { type Browser, chromium } from 'playwright-core';

/** Switches of the packaged browser that would weaken what is tested, or that only suit a single page. */
const unwanted =
  /^--(disable-web-security|allow-running-insecure-content|single-process|in-process-gpu|enable-features)/;

const quiet = [
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Debian packages that hold the system libraries the browser needs beside the standard C library. */
const packageOf: Readonly<Record<string, string>> = {
  'libnss3.so': 'libnss3',
  'libnssutil3.so': 'libnss3',
  'libsmime3.so': 'libnss3',
  'libssl3.so': 'libnss3',
  'libnspr4.so': 'libnspr4',
  'libplc4.so': 'libnspr4',
  'libplds4.so': 'libnspr4',
  'libexpat.so.1': 'libexpat1',
  'libgcc_s.so.1': 'libgcc-s1',
};

/** Launches the browser that comes with the packages, with a fresh profile. A missing system library is named with its package. */
export async function launchBrowser(): Promise<Browser> {
  sparticuz.setGraphicsMode = false;
  const executablePath = await sparticuz.executablePath();
  const args = [...sparticuz.args.filter((arg) => !unwanted.test(arg)), ...quiet];
  try {
    return await chromium.launch({ executablePath, args, headless: true });
  } catch (error) {
    const missing = missingLibraries(executablePath);
    if (missing.length === 0) throw error;
    const packages = [...new Set(missing.map((library) => packageOf[library] ?? `the package that holds ${library}`))];
    throw new Error(
      `The browser for the tests needs system libraries that are not here: ${missing.join(', ')}. On Debian: apt-get install ${packages.join(' ')}`,
      { cause: error },
    );
  }
}

function missingLibraries(executablePath: string): string[] {
  try {
    const listed = execFileSync('ldd', [executablePath], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
    return [...listed.matchAll(/^\s*(\S+) => not found/gm)].map((match) => match[1]!);
  } catch {
    return [];
  }
}
