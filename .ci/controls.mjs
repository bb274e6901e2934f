// Uses live controls in a real JupyterLab and Notebook in a real browser, as a person would: drags a slider and sees the figure change,
// lets a target power go, pins, asks for the cell, restarts and runs again, saves. Started by .ci/controls, which sets up what this needs.
// Arguments: lab|notebook, address with token, folder for screenshots.
import { createRequire } from "node:module";

const { chromium } = createRequire(process.env.PLAYWRIGHT_FOLDER + "/")("playwright-core");
const [kind, address, shots] = process.argv.slice(2);
const WAIT = 120_000;
const NOTEBOOK = "notebooks/11-explore.ipynb";

async function until(what, test) {
  const end = Date.now() + WAIT;
  while (!(await test())) {
    if (Date.now() > end) throw new Error(kind + ": no " + what + " within " + WAIT / 1000 + " s");
    await new Promise((done) => setTimeout(done, 100));
  }
  console.log(kind + ": " + what);
}

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM || "/usr/bin/chromium", args: ["--no-sandbox"] });
const page = await browser.newPage({ viewport: { width: 1300, height: 1250 } });
page.setDefaultTimeout(WAIT);
const complaints = [];
page.on("console", (message) => {
  if (message.type() === "error" && /widget|model/i.test(message.text())) complaints.push(message.text());
});
try {
  await page.goto(address.replace("/lab?", `/lab/tree/${NOTEBOOK}?`).replace("/tree?", `/notebooks/${NOTEBOOK}?`));
  const cells = page.locator(".jp-Notebook .jp-CodeCell");
  await cells.first().waitFor();
  await new Promise((settled) => setTimeout(settled, 3000));
  const menu = async (name, command) => {
    await page.locator(`.lm-MenuBar-itemLabel:text-is("${name}")`).click();
    await page.locator(`.lm-Menu li[data-command="${command}"]`).first().click();
  };
  const runAll = () => menu("Run", "runmenu:run-all");
  const panel = page.locator(".jp-CodeCell:has(.widget-slider)").first();
  const slider = (name) => panel.locator(`.widget-vbox:has(> .widget-label:text("${name}"))`).first();
  const figure = async () => {
    const text = await panel.innerText().catch(() => "");
    return (text.match(/^([\d.,]+ (?:hp|kW)) at the wheels/m) || [])[1] || "";
  };
  const drag = async (name, share) => {
    const track = slider(name).locator(".noUi-base");
    const handle = slider(name).locator(".noUi-handle");
    await handle.scrollIntoViewIfNeeded();
    const from = await handle.boundingBox();
    const whole = await track.boundingBox();
    await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await page.mouse.down();
    const to = whole.x + whole.width * share;
    const steps = 20;
    for (let i = 1; i <= steps; i++) {
      await page.mouse.move(from.x + ((to - from.x) * i) / steps, from.y + from.height / 2);
      await new Promise((next) => setTimeout(next, 25));
    }
    return () => page.mouse.up();
  };

  await runAll();
  await until("controls on the page", async () => (await page.locator(".jp-CodeCell .widget-slider").count()) > 5);
  await until("a figure beside them", async () => (await figure()) !== "");
  await panel.scrollIntoViewIfNeeded();
  await new Promise((settled) => setTimeout(settled, 1500));
  await page.screenshot({ path: `${shots}/${kind}-start.png` });

  const before = await figure();
  const drop = await drag("highest boost", 0.45);
  await until(`another figure while dragging (${before} before)`, async () => (await figure()) !== before);
  await drop();
  await new Promise((settled) => setTimeout(settled, 800));
  const dragged = await figure();
  console.log(`${kind}: ${before} became ${dragged}`);

  // from the pointer's move to the new picture
  const times = [];
  const handle = slider("highest boost").locator(".noUi-handle");
  const at = await handle.boundingBox();
  await page.mouse.move(at.x + at.width / 2, at.y + at.height / 2);
  await page.mouse.down();
  for (let i = 1; i <= 25; i++) {
    const change = page.evaluate(
      () =>
        new Promise((seen) => {
          const area = document.querySelector(".jp-CodeCell:has(.widget-slider) .jp-Cell-outputArea");
          const began = performance.now();
          const watch = new MutationObserver((changes) => {
            if (changes.some((c) => [...c.addedNodes].some((n) => n.querySelector && n.querySelector("svg.chart")))) {
              watch.disconnect();
              requestAnimationFrame(() => seen(performance.now() - began));
            }
          });
          watch.observe(area, { childList: true, subtree: true });
          setTimeout(() => seen(NaN), 3000);
        }),
    );
    await page.mouse.move(at.x + at.width / 2 + 3 * i, at.y + at.height / 2);
    times.push(await change);
  }
  await page.mouse.up();
  const sorted = times.filter(Number.isFinite).sort((a, b) => a - b);
  console.log(`${kind}: drag to picture p50 ${Math.round(sorted[sorted.length >> 1])} ms, p90 ${Math.round(sorted[Math.floor(sorted.length * 0.9)])} ms, ${sorted.length} of ${times.length} seen`);
  if (sorted.length < times.length / 2) throw new Error(kind + ": most moves gave no new picture");

  await panel.locator('button:text("Pin this")').click();
  await until("a pinned setup in the comparison", async () => (await panel.innerText()).includes("Line by line"));
  await panel.locator('button:text("As code")').click();
  await until("the cell that repeats it", async () => (await panel.innerText()).includes(".withHighestBoost("));
  await page.screenshot({ path: `${shots}/${kind}-pinned.png`, fullPage: false });

  const boost = async () => (await slider("highest boost").locator(".widget-readout").innerText()).trim();
  const stood = await boost();
  const release = await drag("target power", 0.3);
  await release();
  await until("another boost after a target was let go", async () => (await boost()) !== stood);
  await page.screenshot({ path: `${shots}/${kind}-target.png` });

  await page.keyboard.press("Control+s");
  await page.reload();
  await until("the controls after a reload", async () => (await page.locator(".jp-CodeCell .widget-slider").count()) > 5);

  await menu("Kernel", "kernelmenu:restart");
  await page.locator(".jp-Dialog button.jp-mod-accept").click();
  await new Promise((settled) => setTimeout(settled, 4000));
  await runAll();
  await until("the start again after a restart", async () => (await figure()) === before);
  await until("no slider that leads nowhere", async () => (await panel.locator(".jp-Widget-disconnected, .jupyter-widgets-disconnected").count()) === 0);

  if (kind === "lab") await page.keyboard.press("Control+b"); // the list of files
  await page.setViewportSize({ width: 400, height: 1400 });
  await new Promise((settled) => setTimeout(settled, 1500));
  await panel.scrollIntoViewIfNeeded();
  await page.screenshot({ path: `${shots}/${kind}-narrow.png` });
  if (complaints.length) throw new Error(kind + ": the page wrote to the console: " + complaints[0]);
} catch (problem) {
  await page.screenshot({ path: `${shots}/${kind}-failed.png` });
  console.error(String(problem.message || problem));
  process.exitCode = 1;
} finally {
  await browser.close();
}
