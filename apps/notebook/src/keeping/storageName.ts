/** The database of the page; apart, since the first visit loads nothing else of its storage. */
export const storageName = "leeway";
