import * as z from 'zod';

/** An ISO 639-1 code where one is told. */
export const languageSchema = z.exactOptional(z.string().regex(/^[a-z]{2}$/));
