/**
 * What may become a script or a worker here? Only files of this station's own origin.
 *
 * Loaded before everything else, because Solid writes its templates through innerHTML and the page's policy
 * (`require-trusted-types-for 'script'`) refuses that without a policy named `default`. So HTML passes through
 * as it is: this protects script addresses, and nothing else. What keeps foreign markup out is that no screen
 * hands text to innerHTML, and what keeps foreign scripts from running is `script-src 'self'`.
 *
 * Where a browser knows no Trusted Types, this does nothing. Checked by tests/browser/policy.test.ts.
 */
interface PolicyFactory {
  createPolicy(
    name: string,
    rules: {
      createHTML(html: string): string;
      createScriptURL(address: string): string;
      createScript(source: string): never;
    },
  ): unknown;
}

const { trustedTypes } = globalThis as { trustedTypes?: PolicyFactory };

trustedTypes?.createPolicy('default', {
  createHTML: (html) => html,
  createScriptURL: (address) => {
    const url = new URL(address, document.baseURI);
    if (url.protocol.startsWith('http') && url.origin === location.origin) return url.href;
    throw new TypeError(`No script from elsewhere: ${url.href}`);
  },
  createScript: () => {
    throw new TypeError('No script made from text');
  },
});

export {};
