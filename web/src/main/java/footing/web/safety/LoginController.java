package footing.web.safety;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Asks for the password. */
@Controller
class LoginController {
    @GetMapping("/login")
    String login(
            @RequestParam(required = false) String wrong, @RequestParam(required = false) String wait, Model model) {
        model.addAttribute("wrong", wrong != null);
        model.addAttribute("wait", wait != null);
        return "login";
    }
}
