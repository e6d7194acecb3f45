/**
 * What the page may do, said once and said by the server: a copy in index.html could neither carry
 * frame-ancestors nor bind the workers, and `vite` in development needs inline styles.
 */
const contentSecurity = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types default',
].join('; ');

/** What is not asked of the tablet: its screen is kept awake, its sound begins with a touch, and that is all. */
const permissions = [
  'accelerometer',
  'autoplay',
  'browsing-topics',
  'camera',
  'clipboard-read',
  'clipboard-write',
  'display-capture',
  'encrypted-media',
  'fullscreen',
  'gamepad',
  'geolocation',
  'gyroscope',
  'hid',
  'identity-credentials-get',
  'idle-detection',
  'keyboard-map',
  'local-fonts',
  'magnetometer',
  'microphone',
  'midi',
  'otp-credentials',
  'payment',
  'picture-in-picture',
  'publickey-credentials-create',
  'publickey-credentials-get',
  'serial',
  'storage-access',
  'sync-xhr',
  'usb',
  'window-management',
  'xr-spatial-tracking',
]
  .map((name) => `${name}=()`)
  .join(', ');

/** What every answer of the station's server carries. Checked by tests/scripts/server.test.ts. */
export const strictHeaders = {
  'Content-Security-Policy': contentSecurity,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': permissions,
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'X-DNS-Prefetch-Control': 'off',
};
