/**
 * Evaluated in the page: tries to send something, or to make a script or markup of a text, in every way there is, and says
 * of each whether it was "refused".
 *
 * @param own  Address of the page.
 */
export async function tries(own: string): Promise<Record<string, string>> {
  const code = "data:text/javascript,export{}";
  const elsewhere = "http://127.0.0.1:9/leak";
  const of = (work: () => unknown): Promise<string> =>
    Promise.resolve()
      .then(work)
      .then(
        (outcome) => (outcome === "refused" ? "refused" : "allowed"),
        () => "refused",
      );
  /** Something with `load` and `error`, put into the page. */
  const loaded = (name: string, set: (element: HTMLElement) => void): Promise<string> =>
    of(
      () =>
        new Promise((resolve, reject) => {
          const element = document.createElement(name);
          element.addEventListener("load", resolve);
          element.addEventListener("error", reject);
          set(element);
          document.body.append(element);
          // A frame that is refused shows an error page, and says that it is loaded.
          if (name === "iframe") setTimeout(() => resolve("refused"), 500);
        }),
    );
  /** What the policy reports while something that says nothing itself is done. */
  const reported = (work: () => void): Promise<string> =>
    of(
      () =>
        new Promise((resolve, reject) => {
          document.addEventListener("securitypolicyviolation", reject, { once: true });
          work();
          setTimeout(resolve, 2000);
        }),
    );
  const ran = (work: () => void): Promise<string> =>
    of(() => {
      Reflect.deleteProperty(window, "ran");
      work();
      return "ran" in window ? "allowed" : "refused";
    });
  return {
    own: await of(() => fetch(own)),
    fetch: await of(() => fetch(elsewhere, { mode: "no-cors" })),
    request: await of(
      () =>
        new Promise((resolve, reject) => {
          const request = new XMLHttpRequest();
          request.onload = resolve;
          request.onerror = reject;
          request.open("GET", elsewhere);
          request.send();
        }),
    ),
    beacon: await reported(() => navigator.sendBeacon(elsewhere, "x")),
    socket: await reported(() => new WebSocket("ws://127.0.0.1:9/leak")),
    events: await reported(() => new EventSource(elsewhere)),
    picture: await loaded("img", (element) => element.setAttribute("src", elsewhere)),
    "picture of data": await loaded("img", (element) =>
      element.setAttribute("src", "data:image/gif;base64,R0lGODlhAQABAAAAACwAAAAAAQABAAA="),
    ),
    sheet: await loaded("link", (element) => {
      element.setAttribute("rel", "stylesheet");
      element.setAttribute("href", elsewhere);
    }),
    frame: await reported(() => {
      const frame = document.createElement("iframe");
      frame.src = elsewhere;
      document.body.append(frame);
    }),
    "inline style": await reported(() => {
      const style = document.createElement("style");
      style.textContent = "body { color: red }";
      document.body.append(style);
    }),
    form: await reported(() => {
      const form = document.createElement("form");
      form.action = elsewhere;
      form.target = "_blank";
      document.body.append(form);
      form.submit();
    }),
    script: await ran(() => {
      const script = document.createElement("script");
      script.textContent = "window.ran = true";
      document.body.append(script);
    }),
    markup: await ran(() => {
      document.createElement("div").innerHTML = "<b>x</b>";
      Reflect.set(window, "ran", true);
    }),
    // biome-ignore lint/security/noGlobalEval: that it is refused is what is tried
    evaluation: await of(() => eval("1")),
    module: await of(() => import(/* @vite-ignore */ code)),
    worker: await of(() => new Worker("data:text/javascript,1")),
    "foreign worker": await of(() => new Worker(`${elsewhere}.js`)),
  };
}
