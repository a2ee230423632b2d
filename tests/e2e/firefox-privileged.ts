// Functions, as text, that run inside Firefox's own window with the browser's privileges. They are text because the names
// they use (SidebarController, CustomizableUI, Cu) exist only there.

export const clickToolbarButton = `async (widget) => {
  const until = async (found) => {
    for (let tries = 0; tries < 200; tries += 1) {
      const thing = found();
      if (thing) return thing;
      await new Promise((go) => setTimeout(go, 50));
    }
    throw new Error('Firefox did not show the add-on');
  };
  CustomizableUI.addWidgetToArea(widget + '-browser-action', 'nav-bar');
  const button = await until(() => {
    const shown = document.getElementById(widget + '-BAP');
    return shown?.getBoundingClientRect().width > 0 && shown;
  });
  const { x, y, width, height } = button.getBoundingClientRect();
  for (const event of ['mousedown', 'mouseup']) {
    window.synthesizeMouseEvent(event, x + width / 2, y + height / 2, { button: 0, clickCount: 1 });
  }
  await until(() => {
    const panel = SidebarController.browser.contentDocument?.querySelector('browser');
    return panel?.currentURI?.spec.startsWith('moz-extension:');
  });
}`;

export const clickInSidebar = `async (point) => {
  const { x, y } = SidebarController.browser.getBoundingClientRect();
  for (const event of ['mousedown', 'mouseup']) {
    window.synthesizeMouseEvent(event, x + point.x, y + point.y, { button: 0, clickCount: 1 });
  }
}`;

/** The panel is in another process: a script is sent there and its answer comes back as a message. */
export const runInSidebar = `async (expression) => {
  const { messageManager } = SidebarController.browser.contentDocument.querySelector('browser');
  const name = 'sweepbook:' + crypto.randomUUID();
  const answer = new Promise((resolve, reject) => {
    messageManager.addMessageListener(name, function listener({ data }) {
      messageManager.removeMessageListener(name, listener);
      if ('fault' in data) reject(new Error(data.fault));
      else resolve(data.value);
    });
  });
  const script = '(async () => { try { sendAsyncMessage("' + name + '", { value: await (' + expression + ') }) }' +
    ' catch (fault) { sendAsyncMessage("' + name + '", { fault: String(fault) }) } })()';
  messageManager.loadFrameScript('data:application/javascript;charset=utf-8,' + encodeURIComponent(script), false);
  return await answer;
}`;

/** An expression for `runInSidebar`. */
export function typeKey(key: string, ...halves: readonly ('keydown' | 'keyup')[]): string {
  return `(() => {
    const typist = Cc['@mozilla.org/text-input-processor;1'].createInstance(Ci.nsITextInputProcessor);
    typist.beginInputTransactionForTests(content);
    const event = new content.KeyboardEvent('', { key: ${JSON.stringify(key)} });
    for (const half of ${JSON.stringify(halves)}) typist[half](event);
  })()`;
}

export const photographSidebar = `async () => {
  const panel = SidebarController.browser.contentDocument.querySelector('browser');
  const bitmap = await panel.browsingContext.currentWindowGlobal.drawSnapshot(null, 1, 'white');
  const canvas = document.createElementNS('http://www.w3.org/1999/xhtml', 'canvas');
  canvas.width = bitmap.width;
  canvas.height = bitmap.height;
  canvas.getContext('2d').drawImage(bitmap, 0, 0);
  return canvas.toDataURL().split(',')[1];
}`;

/** A click of the pointer in the web page beside the sidebar. */
export const clickInPage = `async () => {
  const { x, y, width, height } = gBrowser.selectedBrowser.getBoundingClientRect();
  for (const event of ['mousedown', 'mouseup']) {
    window.synthesizeMouseEvent(event, x + width / 2, y + height / 2, { button: 0, clickCount: 1 });
  }
}`;
