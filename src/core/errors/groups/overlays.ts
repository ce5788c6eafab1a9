import type { ErrorEntry } from '../entry.ts';

/** Failures of overlays: local changes to a pack. */
export const overlayErrors = {
  OVERLAY_PACK_MISFIT: {
    says: 'An overlay is for another pack, or for other versions of it.',
    next: 'Use it with the pack that it names, or look it through for this version and mend "pack" in its head.',
  },
  OVERLAY_CHANGED_MEANWHILE: {
    says: 'The overlay in the folder is not the one that yours began from.',
    next: 'Export yours to a file, open the one of the folder, and make your changes in it.',
    httpStatus: 409,
  },
  OVERLAY_FILE_TAKEN: {
    says: 'The folder has another file under the name that the overlay would get.',
    next: 'Give the overlay another id.',
    httpStatus: 409,
  },
  OVERLAY_NOT_WRITTEN: {
    says: 'The overlay could not be written into the folder.',
    next: 'Let the server write there, or export the overlay to a file.',
    httpStatus: 500,
  },
  BENCH_WRITES_OFF: {
    says: 'The server was not started to let the bench write into its folder of overlays.',
    next: 'Export the overlay to a file and hand it to whoever runs the server.',
    httpStatus: 403,
  },
  BENCH_NOT_HERE: {
    says: 'The bench writes only from the machine that the server runs on, since there is no sign-in.',
    next: 'Export the overlay to a file and hand it to whoever runs the server.',
    httpStatus: 403,
  },
  OVERLAY_HASH_MISFIT: {
    says: 'The overlay was changed after it was exported.',
    next: 'Ask for the file again; where the change is meant, take "hash" out of it.',
  },
  OVERLAY_NOT_IN_FORCE: {
    says: 'An overlay does not hold on this day and was not applied.',
    next: 'Move validFrom or validTo once it was looked through again.',
  },
  OVERLAY_CONFLICT: {
    says: 'Two overlays of one layer change the same entry.',
    next: 'Let one of the two say it, or put what the farm adds into an overlay of the layer farm.',
  },
  OVERLAY_ENTRY_FIXED: {
    says: 'An overlay changes what another one, applied before it, says must stay.',
    next: 'Take the entry out, or ask the author of the other overlay.',
  },
  OVERLAY_DIRECTION_CHANGED: {
    says: 'An overlay says of a parameter of the pack that another direction is tighter.',
    next: 'Leave "tighter" away: it is taken from the pack.',
  },
  OVERLAY_RULE_REMOVED: {
    says: 'An overlay takes away a protected rule.',
    next: 'Leave the rule in place; rules of law, label, water and safety can only be tightened.',
  },
  OVERLAY_RULE_UNPROTECTED: {
    says: 'An overlay puts a protected rule under a lesser authority.',
    next: 'Give the authority, and "protected", as the pack does.',
  },
  OVERLAY_EFFECT_WEAKER: {
    says: 'An overlay gives a protected rule a weaker effect.',
    next: 'Give the effect of the pack, or a stronger one.',
  },
  OVERLAY_LIFTS_QUICKER: {
    says: 'An overlay lets a protected rule lift more quickly, or in another way.',
    next: 'Give "lifts" as the pack does, or a slower one.',
  },
  OVERLAY_RULE_LOOSENED: {
    says: 'An overlay gives a protected rule a condition that lets more through.',
    next: 'Keep the condition of the pack and join yours to it with any.',
  },
  OVERLAY_REFERENCE_LOOSENED: {
    says: 'An overlay lets more through a protected rule by a rule that it names.',
    next: 'Leave the rule named as the pack has it, or name it and the new one joined with any.',
  },
  OVERLAY_PARAMETER_LOOSENED: {
    says: 'An overlay moves a limit so that a protected rule lets more through.',
    next: 'Keep the value of the pack, or move it the other way; a rule of practice may get a parameter of its own.',
  },
  OVERLAY_DERIVATION_LOOSENED: {
    says: 'An overlay moves a parameter by which a fact is worked out that protected rules read, and not in a way that can only tighten them.',
    next: 'Move it in the direction expected, or leave it as the pack has it.',
  },
  OVERLAY_AGEING_LOOSENED: {
    says: 'An overlay moves for how long a fact that protected rules read stays good; shorter loosens too, since a stop might yield to another source.',
    next: 'Leave it as the pack has it; a limit or a rule of your own can ask for more.',
  },
  OVERLAY_BAND_LOOSENED: {
    says: 'An overlay moves the band of a fact that protected rules read; wider loosens too, since what surely stops might only possibly do so.',
    next: 'Leave it as the pack has it; a limit or a rule of your own can ask for more.',
  },
  OVERLAY_DOSE_LOOSENED: {
    says: 'An overlay moves what the dose is reckoned from otherwise than the pack calls tighter; the label limits the dose.',
    next: 'Move it in the direction expected, or leave it.',
  },
  OVERLAY_QUESTION_LOOSENED: {
    says: 'An overlay lets a question tell a fact that protected rules read otherwise than the pack does.',
    next: 'Keep form, answers, their words and readings; "help" and the sentences may be your own.',
  },
  OVERLAY_SENTENCE_CHANGED: {
    says: 'An overlay rewords or leaves out a sentence of a protected rule.',
    next: 'Keep the sentence of the pack word for word; what is local may stand before or after it.',
  },
  OVERLAY_CAUTION_REMOVED: {
    says: 'An overlay takes away a caution of law, label or water, or a part of it.',
    next: 'Keep the words of the pack and add yours behind them, or add a caution of your own.',
  },
  OVERLAY_UNPROVABLE: {
    says: 'It could not be proved that a protected rule holds as strictly as before, so the overlay is refused.',
    next: 'Keep the condition of the pack as one member of an any, and put yours beside it.',
  },
} as const satisfies Record<string, ErrorEntry>;
