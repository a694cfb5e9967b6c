const require_computeForecast = require("./computeForecast-CDXLTVBe.cjs");
const require_forecast = require("./forecast-uFdRoQ33.cjs");
const require_program = require("./program.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
// src/makePieces.ts
/** What PERT tables are made from, as the build keeps it beside the command: see compute/pieces.ts. */
function piecesFile() {
	const memory = new SharedArrayBuffer(require_engine.bytesOfSharedPieces);
	require_engine.sharePieces(memory);
	require_engine.makePieces();
	return new Uint8Array(memory).slice();
}
// src/rehearse.ts
/** Answers about a plan to nobody, so that the engine compiles what it takes. */
async function rehearse(text) {
	const { forecast } = await require_computeForecast.computeForecast({
		text,
		options: {},
		workers: 1
	});
	if (forecast === void 0) return;
	JSON.stringify(forecast);
	require_forecast.forecastText(forecast, require_program.pageOf({}, { isTTY: false }), {
		planName: "plan.yaml",
		responses: true
	}, {});
}
exports.piecesFile = piecesFile;
exports.rehearse = rehearse;
