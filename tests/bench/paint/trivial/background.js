// The least that opens a side panel from the toolbar button.
void chrome.sidePanel.setPanelBehavior({ openPanelOnActionClick: true });
