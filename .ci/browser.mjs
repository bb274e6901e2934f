// Drives a real Jupyter in a real browser: runs the first notebook, looks for chart and table, completes with Tab, explains
// with Shift-Tab, stops a busy cell with the button, restarts. Started by .ci/browser, which sets up what this needs.
// Arguments: lab|classic, address with token, folder for screenshots.
import { createRequire } from "node:module";

const { chromium } = createRequire(process.env.PLAYWRIGHT_FOLDER + "/")("playwright-core");
const [kind, address, shots] = process.argv.slice(2);
const WAIT = 120_000;

const lab = {
  cells: ".jp-Notebook .jp-CodeCell",
  prompt: ".jp-InputPrompt",
  output: ".jp-OutputArea-output",
  editor: ".cm-content",
  completer: ".jp-Completer:not(.lm-mod-hidden) .jp-Completer-item",
  tooltip: ".jp-Tooltip",
  stop: '[data-command="notebook:interrupt-kernel"]',
  address: (base, path) => base.replace("/lab?", "/lab/tree/" + path + "?"),
  async menu(page, menu, command) {
    await page.locator(`.lm-MenuBar-itemLabel:text-is("${menu}")`).click();
    await page.locator(`.lm-Menu li[data-command="${command}"]`).first().click();
  },
  async runAll(page) {
    await this.menu(page, "Run", "runmenu:run-all");
  },
  async restart(page) {
    await this.menu(page, "Kernel", "kernelmenu:restart");
    await page.locator(".jp-Dialog button.jp-mod-accept").click();
  },
  async append(page) {
    await page.locator(this.cells).last().locator(this.prompt).click();
    await page.keyboard.press("Escape");
    await page.keyboard.press("b");
  },
};
const classic = {
  cells: ".code_cell",
  prompt: ".input_prompt",
  output: ".output_area .output_subarea",
  editor: ".CodeMirror",
  completer: "#complete option, .completions option",
  tooltip: "#pager .pager-contents, #tooltip, .ipython_tooltip",
  stop: "#int_interrupt, button[data-jupyter-action='jupyter-notebook:interrupt-kernel']",
  address: (base, path) => base.replace("/?", "/notebooks/" + path + "?"),
  async runAll(page) {
    await page.locator("#celllink").click();
    await page.locator("#run_all_cells").click();
  },
  async restart(page) {
    await page.locator("#kernellink").click();
    await page.locator("#restart_kernel").click();
    await page.locator(".modal-dialog .btn-danger").click();
  },
  async append(page) {
    await page.locator(this.cells).last().locator(this.prompt).click();
    await page.keyboard.press("Escape");
    await page.keyboard.press("b");
  },
};
const front = kind === "classic" ? classic : lab;

async function until(what, test) {
  const end = Date.now() + WAIT;
  while (!(await test())) {
    if (Date.now() > end) throw new Error(kind + ": no " + what + " within " + WAIT / 1000 + " s");
    await new Promise((done) => setTimeout(done, 200));
  }
  console.log(kind + ": " + what);
}

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM || "/usr/bin/chromium", args: ["--no-sandbox"] });
const page = await browser.newPage({ viewport: { width: 1300, height: 950 } });
page.setDefaultTimeout(WAIT);
try {
  await page.goto(front.address(address, "notebooks/01-power-target.ipynb"));
  const cells = page.locator(front.cells);
  await cells.first().waitFor();
  const last = () => cells.last();
  const done = async (cell) => /\[\s*\d+\s*\]/.test(await cell.locator(front.prompt).first().innerText());
  await new Promise((settled) => setTimeout(settled, 3000));
  await front.runAll(page);
  await until("all cells run", () => done(last()));
  const outputs = page.locator(front.output);
  await until("a table", async () => (await outputs.locator("table").count()) > 0);
  await until("a chart", async () => (await outputs.locator("svg, img").count()) > 0);
  await outputs.locator("table").first().scrollIntoViewIfNeeded();
  await page.screenshot({ path: `${shots}/${kind}-table.png` });
  await outputs.locator("svg, img").first().scrollIntoViewIfNeeded();
  await page.screenshot({ path: `${shots}/${kind}-chart.png` });

  const write = async (text) => {
    await last().locator(front.editor).first().click();
    await page.keyboard.press("Control+A");
    await page.keyboard.type(text);
  };
  const run = () => page.keyboard.press("Control+Enter");
  const shown = (text) => async () => (await last().innerText()).toLowerCase().includes(text.toLowerCase());

  const count = await cells.count();
  await front.append(page);
  await until("a new cell", async () => (await cells.count()) === count + 1);
  await write("Plan.fi");
  await page.keyboard.press("Tab");
  await until("completion by Tab", async () => {
    const offered = await page.locator(front.completer).count();
    return offered > 0 || (await last().innerText()).includes("Plan.find(");
  });
  await page.screenshot({ path: `${shots}/${kind}-complete.png` });
  await page.keyboard.press("Escape");
  await write("Plan.find");
  await page.keyboard.press("Shift+Tab");
  await until("explanation by Shift-Tab", async () =>
    (await page.locator(front.tooltip).allInnerTexts()).join("").includes("Finds the setup for the target"));
  await page.screenshot({ path: `${shots}/${kind}-explain.png` });
  await page.keyboard.press("Escape");

  await write("while (true) {}");
  await run();
  await until("a busy cell", async () => (await last().locator(front.prompt).first().innerText()).includes("*"));
  await page.locator(front.stop).first().click();
  await until("the stop button's effect", shown("Stopped on request"));
  await page.screenshot({ path: `${shots}/${kind}-stopped.png` });

  await write("6 * 7");
  await run();
  await until("an answer after the stop", shown("42"));
  await front.restart(page);
  await new Promise((settled) => setTimeout(settled, 3000));
  await write("job");
  await run();
  await until("an empty session after the restart", shown("cannot find symbol"));
  await write("6 * 8");
  await run();
  await until("an answer after the restart", shown("48"));
} catch (problem) {
  await page.screenshot({ path: `${shots}/${kind}-failed.png` });
  console.error(String(problem.message || problem));
  process.exitCode = 1;
} finally {
  await browser.close();
}
