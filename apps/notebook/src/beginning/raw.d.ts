/** A file as text: the build puts it into a piece of its own. */
declare module "*.yaml?raw" {
  const text: string;
  export default text;
}
