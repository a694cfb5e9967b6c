/** A font as a data URL: the build puts it into the program. */
declare module "*.woff2?inline" {
  const url: string;
  export default url;
}
