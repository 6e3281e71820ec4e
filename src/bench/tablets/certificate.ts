/** The certificate that the bench makes for itself, so that what goes over the home network is encrypted. */
import { AsnConvert, OctetString } from '@peculiar/asn1-schema';
import {
  AlgorithmIdentifier,
  AttributeTypeAndValue,
  AttributeValue,
  BasicConstraints,
  Certificate,
  ExtendedKeyUsage,
  Extension,
  Extensions,
  GeneralName,
  id_ce_basicConstraints,
  id_ce_extKeyUsage,
  id_ce_keyUsage,
  id_ce_subjectAltName,
  id_kp_serverAuth,
  KeyUsage,
  KeyUsageFlags,
  Name,
  RelativeDistinguishedName,
  SubjectAlternativeName,
  SubjectPublicKeyInfo,
  TBSCertificate,
  Validity,
  Version,
} from '@peculiar/asn1-x509';
import { createPrivateKey, generateKeyPairSync, randomBytes, sign, X509Certificate } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { isIP } from 'node:net';
import { join } from 'node:path';

export type DoorCertificate = {
  /** PEM. */
  readonly key: string;
  readonly cert: string;
  /** SHA-256 of the certificate, pairs of hexadecimal digits with colons between: what browsers show. */
  readonly fingerprint: string;
  /** ISO 8601. */
  readonly endsAt: string;
};

const DAY_MS = 86_400_000;
/** Browsers of some makers refuse a certificate that lasts longer than 825 days (from memory). */
const LASTS_DAYS = 365;
/** It is made anew so long before its end. */
const RENEW_DAYS = 30;
/** A clock a little behind doesn't make it one of tomorrow. */
const EARLIER_MS = DAY_MS;

/** ecdsa-with-SHA256 (RFC 5758, 3.2) and commonName (RFC 5280, appendix A.1). */
const ECDSA_SHA256 = '1.2.840.10045.4.3.2';
const COMMON_NAME = '2.5.4.3';

const FOLDER_MODE = 0o700;
const FILE_MODE = 0o600;

const bufferOf = (bytes: Uint8Array): ArrayBuffer => new Uint8Array(bytes).buffer;

function extension(id: string, value: object, critical = false): Extension {
  return new Extension({ extnID: id, critical, extnValue: new OctetString(AsnConvert.serialize(value)) });
}

/** A self-signed certificate for these names and addresses (RFC 5280). */
export function makeCertificate(
  names: readonly string[],
  nowMs: number,
): Pick<DoorCertificate, 'key' | 'cert'> {
  const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const algorithm = new AlgorithmIdentifier({ algorithm: ECDSA_SHA256 });
  const called = new AttributeTypeAndValue({
    type: COMMON_NAME,
    value: new AttributeValue({ utf8String: 'Bench' }),
  });
  const name = new Name([new RelativeDistinguishedName([called])]);
  const spki = publicKey.export({ type: 'spki', format: 'der' });
  const alternatives = names.map((one) =>
    isIP(one) === 0 ? new GeneralName({ dNSName: one }) : new GeneralName({ iPAddress: one }),
  );
  const wanted = new TBSCertificate({
    version: Version.v3,
    // Positive, and never twice.
    serialNumber: bufferOf(Uint8Array.of(1, ...randomBytes(15))),
    signature: algorithm,
    issuer: name,
    subject: name,
    validity: new Validity({
      notBefore: new Date(nowMs - EARLIER_MS),
      notAfter: new Date(nowMs + LASTS_DAYS * DAY_MS),
    }),
    subjectPublicKeyInfo: AsnConvert.parse(bufferOf(spki), SubjectPublicKeyInfo),
    extensions: new Extensions([
      // It vouches for itself alone.
      extension(id_ce_basicConstraints, new BasicConstraints({ cA: false }), true),
      extension(id_ce_keyUsage, new KeyUsage(KeyUsageFlags.digitalSignature), true),
      extension(id_ce_extKeyUsage, new ExtendedKeyUsage([id_kp_serverAuth])),
      extension(id_ce_subjectAltName, new SubjectAlternativeName(alternatives)),
    ]),
  });
  const signature = sign('sha256', Buffer.from(AsnConvert.serialize(wanted)), privateKey);
  const signed = new Certificate({
    tbsCertificate: wanted,
    signatureAlgorithm: algorithm,
    signatureValue: bufferOf(signature),
  });
  return {
    key: String(privateKey.export({ type: 'pkcs8', format: 'pem' })),
    cert: new X509Certificate(Buffer.from(AsnConvert.serialize(signed))).toString(),
  };
}

/** True while it is for all of these names, and its end is not near. */
function serves(certificate: X509Certificate, names: readonly string[], nowMs: number): boolean {
  const endsMs = Date.parse(certificate.validTo);
  const isFor = (name: string): boolean =>
    isIP(name) === 0 ? certificate.checkHost(name) !== undefined : certificate.checkIP(name) !== undefined;
  return (
    endsMs - nowMs > RENEW_DAYS * DAY_MS && Date.parse(certificate.validFrom) <= nowMs && names.every(isFor)
  );
}

/**
 * The certificate that lies in a folder; made anew, with a key of its own,
 * where there is none, it can't be read, its end is near, or the machine has
 * addresses that it isn't for.
 * @throws Error of the file system, where it can't be written
 */
export function certificateIn(folder: string, names: readonly string[], nowMs: number): DoorCertificate {
  const lying = readFrom(folder);
  if (lying !== null && serves(new X509Certificate(lying.cert), names, nowMs)) return withFacts(lying);
  const made = makeCertificate(names, nowMs);
  mkdirSync(folder, { recursive: true, mode: FOLDER_MODE });
  // One file for both, so that key and certificate never come from two makings.
  const file = join(folder, FILE);
  writeFileSync(`${file}.new`, made.key + made.cert, { mode: FILE_MODE });
  renameSync(`${file}.new`, file);
  return withFacts(made);
}

const FILE = 'certificate.pem';

function readFrom(folder: string): Pick<DoorCertificate, 'key' | 'cert'> | null {
  try {
    const text = readFileSync(join(folder, FILE), 'utf8');
    const part = (name: string): string =>
      new RegExp(`-----BEGIN ${name}-----[^-]+-----END ${name}-----\\n?`).exec(text)?.[0] ?? '';
    const [key, cert] = [part('PRIVATE KEY'), part('CERTIFICATE')];
    return new X509Certificate(cert).checkPrivateKey(createPrivateKey(key)) ? { key, cert } : null;
  } catch {
    return null;
  }
}

function withFacts({ key, cert }: Pick<DoorCertificate, 'key' | 'cert'>): DoorCertificate {
  const { fingerprint256, validTo } = new X509Certificate(cert);
  return { key, cert, fingerprint: fingerprint256, endsAt: new Date(validTo).toISOString() };
}
