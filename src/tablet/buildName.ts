/** Which build is this page of: its version and eight digits of its contents, "0.1.0 3f2a91c0"? Empty where it is being worked on. */
export const readBuildName = (page: Document = document): string =>
  page.querySelector<HTMLMetaElement>('meta[name="station-build"]')?.content ?? '';
