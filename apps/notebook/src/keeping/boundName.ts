/** The name of the file this page is bound to; undefined: to none. */
export function boundName(): string | undefined {
  const meta = document.querySelector('meta[name="leeway-plan"]');
  return meta instanceof HTMLMetaElement ? meta.content : undefined;
}
