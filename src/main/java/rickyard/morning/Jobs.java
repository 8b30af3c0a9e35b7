package rickyard.morning;

import javax.sql.DataSource;
import org.springframework.batch.core.repository.JobRepository;
import org.springframework.batch.core.repository.support.JdbcJobRepositoryFactoryBean;
import org.springframework.transaction.PlatformTransactionManager;

/** The repository of job executions, in a ledger's database. */
final class Jobs {
  private Jobs() {}

  static JobRepository in(DataSource source, PlatformTransactionManager transactions, String kind) {
    try {
      JdbcJobRepositoryFactoryBean factory = new JdbcJobRepositoryFactoryBean();
      factory.setDataSource(source);
      factory.setTransactionManager(transactions);
      factory.setDatabaseType(kind);
      factory.afterPropertiesSet();
      return factory.getObject();
    } catch (Exception e) {
      throw new IllegalStateException("the job repository cannot be set up", e);
    }
  }
}
