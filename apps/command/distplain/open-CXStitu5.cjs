const require_program = require("./program.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_readDocument = require("./readDocument-BWEZLtFt.cjs");
const require_whyNotWritten = require("./whyNotWritten-C19bLT-P.cjs");
const require_writeWhole = require("./writeWhole-D_ORKldc.cjs");
let node_path = require("node:path");
let node_fs = require("node:fs");
let node_crypto = require("node:crypto");
let node_http = require("node:http");
// src/open/boundFile.ts
/** @param path  An existing file; a symbolic link is followed once, now, so that a save goes where the reading came from. */
function boundFile(path) {
	const real = (0, node_fs.realpathSync)(path);
	const read = () => {
		const bytes = inWords(() => (0, node_fs.readFileSync)(real), whyNotRead);
		return {
			text: new TextDecoder("utf-8", {
				fatal: true,
				ignoreBOM: true
			}).decode(bytes),
			tag: tagOf(bytes)
		};
	};
	return {
		read,
		save(text, tag) {
			const now = read();
			if (now.tag === tag || now.text === text) {
				const bytes = Buffer.from(text);
				if (now.text !== text) inWords(() => require_writeWhole.writeWhole(real, text, true), (error) => {
					const { rule, remedy } = require_whyNotWritten.whyNotWritten(real, error);
					return `${rule} ${remedy}`;
				});
				return {
					kind: "saved",
					tag: tagOf(bytes)
				};
			}
			return {
				kind: "moved-on",
				now
			};
		}
	};
}
/** Does it; what breaks is told in words: the page shows them. */
function inWords(work, words) {
	try {
		return work();
	} catch (error) {
		throw new Error(words(error), { cause: error });
	}
}
function whyNotRead(error) {
	const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
	if (code === "ENOENT" || code === "ENOTDIR") return "The file is not there any more. Put it back, or save the plan to another place.";
	if (code === "EACCES" || code === "EPERM") return "You may not read the file any more. Ask for permission, or save the plan to another place.";
	return `The file could not be read (${code}). Save the plan to another place.`;
}
function tagOf(bytes) {
	return (0, node_crypto.createHash)("sha256").update(bytes).digest("hex").slice(0, 32);
}
// src/open/guard.ts
/** A plan of more bytes than this is none a person wrote. */
var largestPlan = 2e7;
/**
* Whether a request may be answered at all. The server listens on loopback alone, and still any page open in the
* reader's browser could try it: so the host must be loopback by name (a name that was made to point here is another
* one: DNS rebinding), a foreign origin is refused, and the path begins with a token nobody else knows.
*
* @returns the path after the token, or why not.
*/
function admitted(request, port, token) {
	const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
	const { host, origin } = request.headers;
	if (host === void 0 || !hosts.includes(host.toLowerCase())) return {
		status: 421,
		text: "This server answers to 127.0.0.1 only."
	};
	if (origin !== void 0 && !hosts.some((one) => origin === `http://${one}`)) return {
		status: 403,
		text: "This server answers its own page only."
	};
	const site = request.headers["sec-fetch-site"];
	if (site !== void 0 && site !== "same-origin" && site !== "none") return {
		status: 403,
		text: "This server answers its own page only."
	};
	let path;
	try {
		path = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
	} catch {
		return {
			status: 400,
			text: "That is no address."
		};
	}
	const [, given = "", ...rest] = path.split("/");
	if (!same(given, token) || path.includes("\0")) return {
		status: 404,
		text: "There is nothing here. The address that `leeway open` printed is the only one."
	};
	return { path: `/${rest.join("/")}` };
}
/** Why a body may not be taken as a plan, before it is read. */
function bodyRefusal(request) {
	const { "content-length": length, "content-type": type = "" } = request.headers;
	if (!/^text\/plain(;|$)/.test(type)) return {
		status: 415,
		text: "A plan is sent as text/plain."
	};
	if (length === void 0) return {
		status: 411,
		text: "The length of the plan is missing."
	};
	if (!(Number(length) <= 2e7)) return {
		status: 413,
		text: `A plan has at most ${largestPlan / 1e6} MB.`
	};
}
function same(a, b) {
	const [left, right] = [Buffer.from(a), Buffer.from(b)];
	return left.length === right.length && (0, node_crypto.timingSafeEqual)(left, right);
}
// src/open/serveNotebook.ts
var types = {
	".html": "text/html; charset=utf-8",
	".js": "text/javascript; charset=utf-8",
	".css": "text/css; charset=utf-8",
	".svg": "image/svg+xml",
	".woff2": "font/woff2"
};
/**
* The page carries a policy of its own, which is stricter still (it knows its scripts); here it is said that nobody may
* frame it. Workers have only what their own answer says: they may start more of the page's files and ask for nothing.
*/
var forAll = [
	"default-src 'none'",
	"script-src 'self' 'wasm-unsafe-eval'",
	"worker-src 'self'",
	"base-uri 'none'",
	"form-action 'none'",
	"frame-ancestors 'none'"
];
var policy = forAll.join("; ");
var pagePolicy = [
	...forAll,
	"style-src 'self'",
	"font-src 'self'",
	"img-src 'self' blob:",
	"connect-src 'self'"
].join("; ");
var headers = {
	"Content-Security-Policy": policy,
	"X-Content-Type-Options": "nosniff",
	"Referrer-Policy": "no-referrer",
	"Cross-Origin-Opener-Policy": "same-origin",
	"Cross-Origin-Resource-Policy": "same-origin",
	"Cache-Control": "no-store"
};
/**
* Serves the notebook bound to one file, on loopback, under a path with a token of its own: the page's files, and
* `plan`, which is read (GET) and saved (PUT with If-Match). Nothing else of the disk can be reached.
*
* @param page  Folder of the built notebook.
* @param port  0: any that is free.
* Rejects with the error of listening.
*/
function serveNotebook(page, file, name, port = 0) {
	const token = (0, node_crypto.randomBytes)(16).toString("hex");
	const folder = (0, node_fs.realpathSync)(page);
	return new Promise((resolve, reject) => {
		const server = (0, node_http.createServer)({ maxHeaderSize: 16384 }, (request, response) => {
			const { port: own } = server.address();
			const way = admitted(request, own, token);
			if ("status" in way) return refuse(response, way);
			if (way.path === "/plan") return answerPlan(request, response, file);
			if (request.method !== "GET" && request.method !== "HEAD") return refuse(response, {
				status: 405,
				text: "Only GET and HEAD."
			});
			servePage(folder, way.path, request, response, name);
		});
		server.headersTimeout = 1e4;
		server.requestTimeout = 3e4;
		server.on("error", reject);
		server.listen(port, "127.0.0.1", () => {
			const { port: own } = server.address();
			resolve({
				address: `http://127.0.0.1:${own}/${token}/`,
				server
			});
		});
	});
}
function refuse(response, { status, text }) {
	response.writeHead(status, {
		...headers,
		"Content-Type": "text/plain; charset=utf-8",
		Connection: "close"
	}).end(`${text}\n`);
}
var plain = {
	...headers,
	"Content-Type": "text/plain; charset=utf-8"
};
function answerPlan(request, response, file) {
	try {
		if (request.method === "PUT") savePlan(request, response, file);
		else if (request.method === "GET" || request.method === "HEAD") tellPlan(request, response, file);
		else refuse(response, {
			status: 405,
			text: "Only GET, HEAD and PUT."
		});
	} catch (error) {
		failed(response, error);
	}
}
function tellPlan(request, response, file) {
	const { text, tag } = file.read();
	const etag = `"${tag}"`;
	if (request.headers["if-none-match"] === etag) response.writeHead(304, {
		...headers,
		ETag: etag
	}).end();
	else response.writeHead(200, {
		...plain,
		ETag: etag
	}).end(request.method === "HEAD" ? void 0 : text);
}
function savePlan(request, response, file) {
	const tag = /^"([0-9a-f]+)"$/.exec(request.headers["if-match"] ?? "")?.[1];
	const refusal = bodyRefusal(request) ?? (tag === void 0 ? {
		status: 400,
		text: "If-Match must name the reading this builds on."
	} : void 0);
	if (refusal !== void 0) {
		refuse(response, refusal);
		return;
	}
	takeBody(request, response, (text) => {
		const written = file.save(text, tag ?? "");
		if (written.kind === "saved") response.writeHead(204, {
			...headers,
			ETag: `"${written.tag}"`
		}).end();
		else response.writeHead(412, {
			...plain,
			ETag: `"${written.now.tag}"`
		}).end(written.now.text);
	});
}
function takeBody(request, response, take) {
	const parts = [];
	let size = 0;
	request.on("data", (part) => {
		size += part.length;
		if (size > 2e7) {
			refuse(response, {
				status: 413,
				text: `A plan has at most ${largestPlan / 1e6} MB.`
			});
			request.destroy();
			return;
		}
		parts.push(part);
	});
	request.on("end", () => {
		if (!request.complete) return;
		try {
			take(new TextDecoder("utf-8", {
				fatal: true,
				ignoreBOM: true
			}).decode(Buffer.concat(parts)));
		} catch (error) {
			failed(response, error);
		}
	});
}
/** The file could not be read or written: the page says so, and keeps what it has. */
function failed(response, error) {
	const words = error instanceof TypeError ? "The file is no UTF-8 text." : error instanceof Error ? error.message : String(error);
	response.writeHead(500, {
		...headers,
		"Content-Type": "text/plain; charset=utf-8"
	}).end(`${words}\n`);
}
function servePage(folder, path, request, response, name) {
	const wanted = (0, node_path.normalize)((0, node_path.join)(folder, path.endsWith("/") ? `${path}index.html` : path));
	const found = (0, node_fs.statSync)(wanted, { throwIfNoEntry: false })?.isFile() === true ? (0, node_fs.realpathSync)(wanted) : "";
	if (!found.startsWith(folder + node_path.sep)) {
		refuse(response, {
			status: 404,
			text: "There is nothing here."
		});
		return;
	}
	const bytes = (0, node_fs.readFileSync)(found);
	const isPage = (0, node_path.basename)(found) === "index.html";
	const body = isPage ? bound(bytes.toString("utf8"), name) : bytes;
	response.writeHead(200, {
		...headers,
		...isPage ? { "Content-Security-Policy": pagePolicy } : {},
		"Content-Type": types[(0, node_path.extname)(found)] ?? "application/octet-stream",
		"Content-Length": Buffer.byteLength(body)
	}).end(request.method === "HEAD" ? void 0 : body);
}
/** The page, told that it is bound to a file of this name, and that it may ask this server for it. */
function bound(html, name) {
	const escaped = name.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
	return html.replace(/connect-src (&#39;|')none\1/, "connect-src $1self$1").replace("<title>", () => `<meta name="leeway-plan" content="${escaped}" />\n    <title>`);
}
// src/verbs/open.ts
/** The built notebook: beside the built command, or beside the sources. */
var pages = ["../../notebook/dist", "../../../notebook/dist"].map((path) => (0, node_path.join)(__dirname, path));
/** Serves the notebook bound to one plan file until it is stopped. */
async function openVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const port = values.count("port", 65535);
	const problems = [...values.problems];
	if (call.subject === "-") problems.push(require_program.callProblem("no-file", "-", "The notebook is bound to a file.", "Name the file of the plan."));
	if (problems.length > 0) {
		require_program.printProblems(problems);
		return require_program.exitCodes.invalid;
	}
	const subject = call.subject ?? "-";
	const document = await require_readDocument.readDocument(subject);
	if (document.text === void 0) {
		if (document.problem !== void 0) require_program.printProblems([document.problem], document.name);
		return require_program.exitCodes.invalid;
	}
	const page = pages.find((path) => (0, node_fs.existsSync)((0, node_path.join)(path, "index.html")));
	if (page === void 0) {
		require_program.printProblems([require_program.callProblem("no-notebook", "", "The notebook has not been built.", "Run `npm run setup` once.")]);
		return require_program.exitCodes.invalid;
	}
	try {
		const { address } = await serveNotebook(page, boundFile((0, node_path.resolve)(subject)), (0, node_path.basename)(subject), port ?? 0);
		require_program.printAnswer(`${(0, node_path.basename)(subject)} is open at ${address}\nEvery change is saved to the file. The address is for you alone; Ctrl+C ends it.\n`);
	} catch (error) {
		const words = error instanceof Error ? error.message : String(error);
		require_program.printProblems([require_program.callProblem("not-served", "", `It could not be served on 127.0.0.1: ${words}.`, "Name another --port.")]);
		return require_program.exitCodes.invalid;
	}
	return new Promise(() => {});
}
exports.openVerb = openVerb;
