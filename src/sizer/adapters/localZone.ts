/** The reader's own time zone, an IANA name. */
export function localZone(): string {
  return new Intl.DateTimeFormat().resolvedOptions().timeZone;
}
