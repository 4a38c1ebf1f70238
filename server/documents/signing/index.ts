export { canonicalJson } from './canonical-json.ts';
export { digestOf, keyIdOf, sealCertificate, shortCodeOf, signCertificate } from './seal-certificate.ts';
export { verifyCertificate, type CertificateCheck, type CertificateFault } from './verify-certificate.ts';
