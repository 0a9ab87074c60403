package footing.web.api;

import footing.io.casefile.CaseSchema;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** What programs need to know before they ask. */
@RestController
class DescriptionController {
    @GetMapping("/api/openapi.json")
    ResponseEntity<Resource> description() {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_JSON)
                .body(new ClassPathResource("openapi.json", DescriptionController.class));
    }

    /** The case file as JSON Schema. */
    @GetMapping("/api/case-schema.json")
    ResponseEntity<String> schema() {
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("application/schema+json"))
                .body(CaseSchema.json());
    }
}
