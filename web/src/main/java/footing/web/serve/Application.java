package footing.web.serve;

import org.springframework.boot.autoconfigure.SpringBootApplication;

/** All parts of the page. */
@SpringBootApplication(scanBasePackages = "footing.web", proxyBeanMethods = false)
class Application {}
