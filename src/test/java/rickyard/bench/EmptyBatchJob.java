package rickyard.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import org.h2.jdbcx.JdbcConnectionPool;
import org.springframework.batch.core.configuration.support.MapJobRegistry;
import org.springframework.batch.core.job.Job;
import org.springframework.batch.core.job.builder.JobBuilder;
import org.springframework.batch.core.job.parameters.JobParameters;
import org.springframework.batch.core.job.parameters.JobParametersBuilder;
import org.springframework.batch.core.launch.support.TaskExecutorJobOperator;
import org.springframework.batch.core.repository.JobRepository;
import org.springframework.batch.core.repository.support.JdbcJobRepositoryFactoryBean;
import org.springframework.batch.core.step.builder.StepBuilder;
import org.springframework.batch.infrastructure.repeat.RepeatStatus;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.task.SyncTaskExecutor;
import org.springframework.jdbc.datasource.init.ScriptUtils;
import org.springframework.jdbc.support.JdbcTransactionManager;

/**
 * The least that a Spring Batch job on an H2 file can be: what start-up is measured against. The
 * first run in a folder makes the tables of the job repository, later ones find them.
 */
public final class EmptyBatchJob {
  private EmptyBatchJob() {}

  public static void main(String[] args) throws Exception {
    JdbcConnectionPool pool =
        JdbcConnectionPool.create(
            "jdbc:h2:file:" + Path.of(args[0]).toAbsolutePath() + "/empty", "sa", "");
    boolean isNew = !Files.exists(Path.of(args[0], "empty.mv.db"));
    try (var connection = pool.getConnection()) {
      if (isNew) {
        ScriptUtils.executeSqlScript(
            connection, new ClassPathResource("org/springframework/batch/core/schema-h2.sql"));
      }
    }
    JdbcTransactionManager transactions = new JdbcTransactionManager(pool);
    JdbcJobRepositoryFactoryBean factory = new JdbcJobRepositoryFactoryBean();
    factory.setDataSource(pool);
    factory.setTransactionManager(transactions);
    factory.setDatabaseType("H2");
    factory.afterPropertiesSet();
    JobRepository repository = factory.getObject();
    TaskExecutorJobOperator operator = new TaskExecutorJobOperator();
    operator.setJobRepository(repository);
    operator.setJobRegistry(new MapJobRegistry());
    operator.setTaskExecutor(new SyncTaskExecutor());
    operator.afterPropertiesSet();
    Job job =
        new JobBuilder("empty", repository)
            .start(
                new StepBuilder("nothing", repository)
                    .tasklet((contribution, context) -> RepeatStatus.FINISHED, transactions)
                    .build())
            .build();
    JobParameters parameters =
        new JobParametersBuilder().addLong("run", System.nanoTime()).toJobParameters();
    System.out.println(operator.start(job, parameters).getStatus());
    pool.dispose();
  }
}
