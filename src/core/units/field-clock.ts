import { DateTime, IANAZone, Zone } from 'luxon';

const minuteMs = 60_000;
/** Clocks of today's zones are put forward or back on a whole minute, some at one past midnight. Before this minute, not all were. */
const firstMinute = Date.UTC(2000, 0) / minuteMs;
/** Most minutes kept of a zone; when full, all are let go. The hours of sixteen days are 384. */
const mostMinutes = 4096;

/**
 * An IANA zone that remembers its clock's difference from UTC for each minute asked for: working it out anew costs
 * some 20 microseconds, and the days ahead ask for the same hours thousands of times.
 */
class FieldZone extends Zone {
  readonly #zone: IANAZone;
  readonly #offsets = new Map<number, number>();

  constructor(zone: IANAZone) {
    super();
    this.#zone = zone;
  }

  override get type(): string {
    return this.#zone.type;
  }

  override get name(): string {
    return this.#zone.name;
  }

  override get isUniversal(): boolean {
    return this.#zone.isUniversal;
  }

  override get isValid(): boolean {
    return this.#zone.isValid;
  }

  override offsetName(...asked: Parameters<IANAZone['offsetName']>): string | null {
    return this.#zone.offsetName(...asked);
  }

  override formatOffset(...asked: Parameters<IANAZone['formatOffset']>): string {
    return this.#zone.formatOffset(...asked);
  }

  override offset(atMs: number): number {
    const minute = Math.floor(atMs / minuteMs);
    const known = this.#offsets.get(minute);
    if (known !== undefined) return known;
    const offset = this.#zone.offset(atMs);
    if (!(minute >= firstMinute)) return offset;
    if (this.#offsets.size >= mostMinutes) this.#offsets.clear();
    this.#offsets.set(minute, offset);
    return offset;
  }

  override equals(other: Zone): boolean {
    return other.type === this.type && other.name === this.name;
  }
}

const zones = new Map<string, FieldZone>();

function zoneOf(name: string): FieldZone {
  const zone = zones.get(name) ?? new FieldZone(IANAZone.create(name));
  zones.set(name, zone);
  return zone;
}

/** A moment (epoch seconds) on the calendar and clock of the field's IANA zone; not valid (`isValid`) where there is no such zone. */
export function atField(at: number, zone: string): DateTime {
  return DateTime.fromSeconds(at, { zone: zoneOf(zone) });
}

/** The first moment of a calendar day (YYYY-MM-DD) at the field; not valid where there is no such day or zone. */
export function dayAtField(iso: string, zone: string): DateTime {
  return DateTime.fromISO(iso, { zone: zoneOf(zone) });
}
