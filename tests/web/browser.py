"""A Chromium without a screen: one width after another, mouse or touch, and a log of all that it asks the network for."""
import json

from selenium import webdriver
from selenium.webdriver.chrome.options import Options
from selenium.webdriver.chrome.service import Service
from selenium.webdriver.common.action_chains import ActionChains


class Browser:
    def __init__(self):
        options = Options()
        for argument in ('--headless=new', '--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run',
                         '--hide-scrollbars', '--disable-dev-shm-usage'):
            options.add_argument(argument)
        options.binary_location = '/usr/bin/chromium'
        options.set_capability('goog:loggingPrefs', {'performance': 'ALL', 'browser': 'ALL'})
        self.driver = webdriver.Chrome(service=Service('/usr/bin/chromedriver'), options=options)
        self.driver.set_script_timeout(60)

    def quit(self):
        self.driver.quit()

    def command(self, name, **arguments):
        return self.driver.execute_cdp_cmd(name, arguments)

    def size(self, width, height, touch=False):
        self.command('Emulation.setDeviceMetricsOverride', width=width, height=height, deviceScaleFactor=1, mobile=touch)
        self.command('Emulation.setTouchEmulationEnabled', enabled=touch, maxTouchPoints=1)

    def media(self, media='', **features):
        self.command('Emulation.setEmulatedMedia', media=media, features=[{'name': k.replace('_', '-'), 'value': v} for k, v in features.items()])

    def open(self, path):
        self.driver.get(path.as_uri())

    def find(self, identity):
        return self.driver.find_element('id', identity)

    def run(self, script, *arguments):
        return self.driver.execute_script(script, *arguments)

    def middle(self, element):
        """Where it is in the window, scrolled to."""
        self.run('arguments[0].scrollIntoView({block: "center", behavior: "instant"})', element)
        box = self.run('const r = arguments[0].getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2]', element)
        return round(box[0]), round(box[1])

    def click(self, element):
        self.middle(element)
        ActionChains(self.driver, duration=0).move_to_element(element).click().perform()

    def keys(self, element, keys):
        self.run('arguments[0].focus()', element)
        ActionChains(self.driver, duration=0).send_keys(keys).perform()

    def touch(self, points):
        x, y = points[0]
        self.command('Input.dispatchTouchEvent', type='touchStart', touchPoints=[{'x': x, 'y': y}])
        for x, y in points[1:]:
            self.command('Input.dispatchTouchEvent', type='touchMove', touchPoints=[{'x': x, 'y': y}])
        self.command('Input.dispatchTouchEvent', type='touchEnd', touchPoints=[])

    def tap(self, element):
        self.touch([self.middle(element)])

    def asked_for(self):
        """Every address that was asked for since the last call."""
        found = []
        for entry in self.driver.get_log('performance'):
            message = json.loads(entry['message'])['message']
            if message['method'] == 'Network.requestWillBeSent':
                found.append(message['params']['request']['url'])
        return found
