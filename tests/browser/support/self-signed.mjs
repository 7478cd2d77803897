// A key and a certificate that nobody but the test believes, made by openssl.
import { spawnSync } from 'node:child_process';
import { createHash, X509Certificate } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Why no certificate can be made here; undefined when one can. */
export function whyNoCertificate() {
  return spawnSync('openssl', ['version'], { stdio: 'ignore' }).status === 0 ? undefined : 'there is no openssl';
}

/**
 * A certificate for one name, for two days.
 *
 * @param {string} name
 * @returns {{ key: string, cert: string, publicKeyHash: string }} both as PEM, and the SHA-256 of the public key in base64
 */
export function selfSigned(name) {
  const folder = mkdtempSync(join(tmpdir(), 'surae-tls-'));
  try {
    const [keyPath, certPath] = [join(folder, 'key.pem'), join(folder, 'cert.pem')];
    const asked = ['req', '-x509', '-nodes', '-days', '2', '-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:prime256v1'];
    const named = ['-subj', `/CN=${name}`, '-addext', `subjectAltName=DNS:${name}`];
    const { status, stderr } = spawnSync('openssl', [...asked, ...named, '-keyout', keyPath, '-out', certPath]);
    if (status !== 0) throw new Error(`openssl ended with ${status}: ${stderr.toString()}`);
    const cert = readFileSync(certPath, 'utf8');
    const publicKey = new X509Certificate(cert).publicKey.export({ type: 'spki', format: 'der' });
    const publicKeyHash = createHash('sha256').update(publicKey).digest('base64');
    return { key: readFileSync(keyPath, 'utf8'), cert, publicKeyHash };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
