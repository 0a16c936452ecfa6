import "@fluentui/web-components/accordion-item.js";
import "@fluentui/web-components/accordion.js";
import "@fluentui/web-components/button.js";
import "@fluentui/web-components/tab.js";
import "@fluentui/web-components/tablist.js";
